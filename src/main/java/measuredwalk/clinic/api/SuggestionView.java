package measuredwalk.clinic.api;

import java.time.LocalDate;
import java.util.List;
import java.util.UUID;

import measuredwalk.tolerance.Advice;
import measuredwalk.tolerance.Reason;
import measuredwalk.tolerance.Suggestion;

/** A suggestion as the API shows it: the same fields as the replay tool's. */
record SuggestionView(UUID dog, LocalDate date, int walks, double minutes, double minutesLow, double minutesHigh,
		double chanceOfTrouble, double toleranceMedian, double toleranceLow, double toleranceHigh, Advice advice,
		List<Reason> reasons) {

	static SuggestionView of(UUID dog, Suggestion suggestion) {
		return new SuggestionView(dog, suggestion.date(), suggestion.walks(), suggestion.minutes(),
				suggestion.minutesLow(), suggestion.minutesHigh(), suggestion.chanceOfTrouble(),
				suggestion.toleranceMedian(), suggestion.toleranceLow(), suggestion.toleranceHigh(),
				suggestion.advice(), suggestion.reasons());
	}

}
