package measuredwalk.escalation.course;

import java.util.List;

/**
 * How often a dog's days are of each grade, shrunk to what dogs with arthritis are
 * assumed to have, so that a few days do not make a baseline.
 *
 * @param shares the share of days of grade 0, 1, 2 and 3, in sum 1
 */
record UsualDays(List<Double> shares) {

	/** Assumed before the dog's own days are known; ours, no source. */
	private static final List<Double> ASSUMED = List.of(0.70, 0.22, 0.06, 0.02);

	/** How many days that assumption is worth; ours, no source. */
	private static final double ASSUMED_DAYS = 10;

	UsualDays {
		shares = List.copyOf(shares);
	}

	static UsualDays of(List<Integer> grades) {
		double days = grades.size() + ASSUMED_DAYS;
		return new UsualDays(java.util.stream.IntStream.range(0, ASSUMED.size())
			.mapToObj((grade) -> (grades.stream().filter((each) -> each == grade).count()
					+ ASSUMED_DAYS * ASSUMED.get(grade)) / days)
			.toList());
	}

	double mean() {
		double mean = 0;
		for (int grade = 1; grade < this.shares.size(); grade++) {
			mean += grade * this.shares.get(grade);
		}
		return mean;
	}

	double deviation() {
		double square = 0;
		for (int grade = 1; grade < this.shares.size(); grade++) {
			square += grade * grade * this.shares.get(grade);
		}
		return Math.sqrt(square - mean() * mean());
	}

	/** The share of days whose grade is at most a value. */
	double shareAtMost(double grade) {
		double share = 0;
		for (int each = 0; each < this.shares.size() && each <= grade; each++) {
			share += this.shares.get(each);
		}
		return Math.min(1, share);
	}

}
