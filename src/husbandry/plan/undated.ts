/** Keys of parcels and packs read 'what:of whom@date': the same without the day. */
export const undated = (key: string): string => key.split('@')[0] ?? key;
