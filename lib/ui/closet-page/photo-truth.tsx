/** What a photo cannot know, said once and plainly. */
export function PhotoTruth() {
  return (
    <section class="photo-truth" aria-labelledby="photo-truth-title">
      <h2 id="photo-truth-title">What a photo cannot know</h2>
      <p>
        Colours here come from pictures, not from the cloth. Light, camera, retouching and your screen can
        each shift them visibly, and two fabrics that agree in one light may part in another. Take a close
        match as a good lead, and compare the pieces in daylight before you rely on it. In a photo of your
        own, pointing at something white or grey takes out the tint of one light, and no more. Where the
        colour is wrong, correct it: your word always wins.
      </p>
    </section>
  );
}
