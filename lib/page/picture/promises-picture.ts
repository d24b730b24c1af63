const SOURCE_NAME = /src|image|img|lazy|original|bg|background|photo/i;

/** Whether an attribute of this name holds a picture that is still to come. */
export const promisesPicture = (name: string): boolean => name.startsWith("data-") && SOURCE_NAME.test(name);
