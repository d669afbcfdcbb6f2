/** Minutes as hours and minutes: 75 is `1:15`. */
export function hoursMinutes(minutes: number): string {
  return `${Math.floor(minutes / 60)}:${String(Math.round(minutes % 60)).padStart(2, '0')}`;
}
