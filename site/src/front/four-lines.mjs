import { temperatureAtKitchen } from 'vitrose';

const printed = { temperatureC: 148, elevationM: 1_500 };
const here = temperatureAtKitchen(printed);
console.log(here.temperatureC); // 142.04
