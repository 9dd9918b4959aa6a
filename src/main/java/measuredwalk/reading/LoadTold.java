package measuredwalk.reading;

import measuredwalk.signs.LoadKind;
import org.jspecify.annotations.Nullable;

/**
 * That a walk was harder than usual in some way, or that it was not.
 *
 * @param kind in what way
 * @param present false when it was denied: 'no hills today'
 * @param walk the place in {@link Reading#walks()} of the walk that it was told of, or
 * null when the message tells of no walk's length
 */
public record LoadTold(LoadKind kind, boolean present, @Nullable Integer walk) {

	/** The same behind other walks. */
	LoadTold behind(int walks) {
		return (this.walk == null) ? this : new LoadTold(this.kind, this.present, this.walk + walks);
	}

}
