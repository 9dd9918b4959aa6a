package measuredwalk.clinic.pages;

import java.util.Collection;

import measuredwalk.clinic.caseload.DogStanding;

/** The share of morning check-ins that were answered. */
final class Answers {

	private Answers() {
	}

	static String words(Collection<DogStanding> standings) {
		int answered = standings.stream().mapToInt(DogStanding::morningsAnswered).sum();
		int expected = standings.stream().mapToInt(DogStanding::morningsExpected).sum();
		if (expected == 0) {
			return "No morning check-in was due in the last 14 days.";
		}
		return "In the last 14 days " + answered + " of " + expected + " morning check-ins were answered ("
				+ Math.round(100.0 * answered / expected) + " %).";
	}

}
