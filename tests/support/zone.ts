// A zone that did not take effect would make every test in it a test of some other zone.
const wanted = process.env.TZ;
const used = new Intl.DateTimeFormat().resolvedOptions().timeZone;
if (wanted !== used) throw new Error(`the tests should run in ${wanted}, but run in ${used}`);
