/**
 * Runs in the page before it is painted first. Where there are things of one's own, where another job was looked at
 * last, where a job was looked at before anybody noted whose things there are, or where the device speaks another language than its browser asked in, the example's head gives way to an
 * empty one. Kept so plain that every browser reads it; its hash stands in the content policy.
 */
export const strangerScript =
  "try{var s=localStorage,v=JSON.parse(s.getItem('pressminute-visit')),j=s.getItem('pressminute-last-job');" +
  "if((v?v.holdsOwn!==false||j&&j!=='club-order':j)||document.currentScript.dataset.language!==navigator.language)" +
  "document.documentElement.dataset.first='own'}catch(e){}";

/** What the content policy knows it by; a test works it out again. */
export const strangerHash = 'sha256-SJOUG2Db/GeSNtVWMlg6Fs1W6GkML76M2XNRz+sJw8k=';
