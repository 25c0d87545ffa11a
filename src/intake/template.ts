/** Example files to download: our own headings with rows that show what can be written. */

export const ANIMALS_TEMPLATE = [
  'who,kind,size,unit,fed,moulted,count,shelf',
  'Clove,Brachypelma hamorii,5.5,in,2026-03-14,2025-11-02,1,A1',
  'Thimble,Caribena versicolor,3/4,in,2026-03-17,2026-02-20,1,A1',
  'Row of twelve,Brachypelma hamorii,12,mm,2026-03-17,,12,B2',
  '',
].join('\r\n');

export const STOCK_TEMPLATE = [
  'bin,prey,role,size,count,came,room',
  'Cricket box,house cricket,bin,medium,500,2026-03-16,',
  'Small crickets,house cricket,bin,3-4 mm,250,2026-03-16,',
  'Roach tub,dubia roach,colony,,120,2026-03-02,',
  '',
].join('\r\n');
