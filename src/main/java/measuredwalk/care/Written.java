package measuredwalk.care;

import java.util.List;

import measuredwalk.journal.MorningEntry;
import measuredwalk.journal.WalkEntry;
import org.jspecify.annotations.Nullable;

/**
 * What a message left in the journal.
 *
 * @param walks walks that were written or changed, in the order told
 * @param morning the morning that was written or changed, or null
 * @param newWalk true when a walk was told of, false when only more was told of one
 */
record Written(List<WalkEntry> walks, @Nullable MorningEntry morning, boolean newWalk) {

	Written {
		walks = List.copyOf(walks);
	}

	boolean nothing() {
		return this.walks.isEmpty() && this.morning == null;
	}

	boolean aboutWalk() {
		return !this.walks.isEmpty();
	}

	@Nullable WalkEntry lastWalk() {
		return this.walks.isEmpty() ? null : this.walks.get(this.walks.size() - 1);
	}

}
