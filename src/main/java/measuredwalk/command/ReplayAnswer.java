package measuredwalk.command;

import java.util.LinkedHashMap;
import java.util.Map;

import measuredwalk.signs.Coded;
import measuredwalk.tolerance.Suggestion;

/** A suggestion as a line of the {@code replay} tool. */
final class ReplayAnswer {

	private ReplayAnswer() {
	}

	static Map<String, Object> of(String dog, Suggestion suggestion) {
		Map<String, Object> answer = new LinkedHashMap<>();
		answer.put("dog", dog);
		answer.put("date", suggestion.date().toString());
		answer.put("walks", suggestion.walks());
		answer.put("minutes", suggestion.minutes());
		answer.put("minutesLow", suggestion.minutesLow());
		answer.put("minutesHigh", suggestion.minutesHigh());
		answer.put("chanceOfTrouble", rounded(suggestion.chanceOfTrouble(), 10_000));
		answer.put("toleranceMedian", rounded(suggestion.toleranceMedian(), 100));
		answer.put("toleranceLow", rounded(suggestion.toleranceLow(), 100));
		answer.put("toleranceHigh", rounded(suggestion.toleranceHigh(), 100));
		answer.put("advice", suggestion.advice().code());
		answer.put("reasons", suggestion.reasons().stream().map(Coded::code).toList());
		return answer;
	}

	private static double rounded(double quantity, double perUnit) {
		return Math.rint(quantity * perUnit) / perUnit;
	}

}
