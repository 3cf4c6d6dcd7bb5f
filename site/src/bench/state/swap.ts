export { swapSyrupForm } from 'vitrose';
