// Steps a clip frame by frame where the browser tells when a frame is shown; the length of a frame is the shortest time seen between two.
const video = document.getElementById('clip');
const steps = document.querySelector('.steps');

if (video && steps && 'requestVideoFrameCallback' in HTMLVideoElement.prototype) {
  const where = document.getElementById('where');
  let frame = 1 / 30;
  let last = null;
  let known = false;

  const shown = (_, data) => {
    const gap = last === null ? 0 : Math.abs(data.mediaTime - last);
    if (gap > 0.0005 && gap < 0.2 && (!known || gap < frame)) {
      frame = gap;
      known = true;
    }
    last = data.mediaTime;
    where.textContent = `${data.mediaTime.toFixed(3)} s`;
    video.requestVideoFrameCallback(shown);
  };

  video.requestVideoFrameCallback(shown);
  steps.hidden = false;
  for (const button of steps.querySelectorAll('button')) {
    button.addEventListener('click', () => {
      video.pause();
      video.currentTime = Math.min(Math.max(0, (last ?? video.currentTime) + Number(button.dataset.step) * frame + frame / 10), video.duration || 0);
    });
  }
}
