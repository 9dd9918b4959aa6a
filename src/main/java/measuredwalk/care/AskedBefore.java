package measuredwalk.care;

import measuredwalk.conversations.CheckIn;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

/**
 * Questions beside the check-ins' own that a message may answer, and the one question
 * that an owner may ask.
 */
@Component
class AskedBefore {

	private final HoursTalk hours;

	private final SameWalk sameWalk;

	private final FirstDragging dragging;

	private final WhatIf whatIf;

	AskedBefore(HoursTalk hours, SameWalk sameWalk, FirstDragging dragging, WhatIf whatIf) {
		this.hours = hours;
		this.sameWalk = sameWalk;
		this.dragging = dragging;
		this.whatIf = whatIf;
	}

	boolean answered(Turn turn, @Nullable CheckIn open, Reply reply) {
		return this.hours.answered(turn, reply) || this.sameWalk.answered(turn, open, reply)
				|| this.dragging.answered(turn, open, reply) || this.whatIf.answered(turn, reply);
	}

}
