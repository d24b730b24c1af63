/** Elements that may show a picture. */
export const PICTURES =
  'img,video[poster],[style*="url("],[data-bg],[data-background],[data-bgset],[data-background-image]';
