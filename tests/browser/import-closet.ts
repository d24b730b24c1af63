import type { Page } from "playwright-core";

/**
 * Brings a closet file in through the closet page's own control and waits until the page says how it went.
 * @param closetPage the extension's closet.html
 */
export async function importCloset(closetPage: Page, file: string): Promise<void> {
  await closetPage.locator('.file-panel input[type="file"]').setInputFiles(file);
  await closetPage
    .locator('[role="status"]')
    .filter({ hasText: /piece|closet|file/i })
    .first()
    .waitFor();
}
