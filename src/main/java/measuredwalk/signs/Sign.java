package measuredwalk.signs;

import org.jspecify.annotations.Nullable;

/**
 * A sign that was told of, seen or denied.
 *
 * @param kind what it is
 * @param present true when it was seen, false when it was said not to be there
 * @param severity how bad, or null when not said
 * @param side which side, or null when not said
 * @param limb front or back leg, or null when not said
 * @param when when it was seen, or null when not said
 * @param onsetMinute minutes from the start of the walk to the first sight of it, at
 * least 0, or null when not said
 */
public record Sign(SignKind kind, boolean present, @Nullable Severity severity, @Nullable Side side,
		@Nullable Limb limb, @Nullable Moment when, @Nullable Double onsetMinute) {

	/**
	 * A sign that was seen, with nothing more said of it.
	 * @param kind what it is
	 * @return the sign
	 */
	public static Sign seen(SignKind kind) {
		return new Sign(kind, true, null, null, null, null, null);
	}

	/**
	 * A sign that was said not to be there.
	 * @param kind what it is
	 * @return the denied sign
	 */
	public static Sign denied(SignKind kind) {
		return new Sign(kind, false, null, null, null, null, null);
	}

}
