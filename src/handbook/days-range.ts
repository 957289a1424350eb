// A number of days between two ends. Kept as both ends to the last: an average of two sources is a figure nobody published.

export interface DaysRange {
  readonly least: number;
  readonly most: number;
}
