package measuredwalk.escalation;

import measuredwalk.signs.Coded;

/** What became of an alert. */
public enum AlertStatus implements Coded {

	OPEN, ACKNOWLEDGED, CLOSED

}
