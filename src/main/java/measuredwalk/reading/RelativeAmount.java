package measuredwalk.reading;

import measuredwalk.signs.Coded;
import org.jspecify.annotations.Nullable;

/**
 * How long a walk was against another walk: 'half the usual', 'ten minutes longer than
 * yesterday'.
 *
 * @param of the walk it is measured by
 * @param factor times as long, such as 0.5, or null
 * @param offsetMinutes so many minutes longer (or, below zero, shorter), or null
 */
public record RelativeAmount(Base of, @Nullable Double factor, @Nullable Double offsetMinutes) {

	/** The walk that another is measured by. */
	public enum Base implements Coded {

		/** This dog's usual walk. */
		USUAL,
		/** The walk before. */
		PREVIOUS

	}

}
