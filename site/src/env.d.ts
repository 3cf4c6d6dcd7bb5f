/// <reference types="@astrojs/starlight/locals" />
/// <reference types="vite-plugin-pwa/vanillajs" />
