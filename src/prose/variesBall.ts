/** Whether the test varied the ball: then its speed off the face is the ball's doing, and the club's speed is not. */
export function variesBall({ noun }: { readonly noun: string }): boolean {
  return /\bballs?\b/i.test(noun);
}
