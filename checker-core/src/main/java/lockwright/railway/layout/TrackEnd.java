package lockwright.railway.layout;

/** One of the two ends (0 or 1) of a track. Which is which has no meaning outside a layout. */
public record TrackEnd(String track, int end) {
  public TrackEnd {
    if (end != 0 && end != 1) {
      throw new IllegalArgumentException("a track has ends 0 and 1, not " + end);
    }
  }

  public TrackEnd opposite() {
    return new TrackEnd(track, 1 - end);
  }

  /** As a record's, but many times faster before it is compiled well: ends are compared often. */
  @Override
  public boolean equals(Object other) {
    return other instanceof TrackEnd o && end == o.end && track.equals(o.track);
  }

  @Override
  public int hashCode() {
    return 31 * track.hashCode() + end;
  }
}
