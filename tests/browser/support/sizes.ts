/** The sizes screens are looked at in: a phone in one hand, the narrowest phone, a laptop. */
export const PHONE = { width: 390, height: 844 };
export const NARROW = { width: 320, height: 640 };
export const LAPTOP = { width: 1280, height: 800 };
