export type { ShopNames } from '../job/batch/shop-names.js';
export { batchText } from './batch/batch-text.js';
export { type BatchReading, type ReadBatchOptions, readBatch } from './batch/read-batch.js';
export { DOCUMENT_CAPS } from './caps.js';
export { kitchenText } from './kitchen/kitchen-text.js';
export { type KitchenReading, readKitchen } from './kitchen/read-kitchen.js';
export type { KitchenDocument } from './kitchen/types.js';
