package measuredwalk.tolerance.simulation;

import java.util.Locale;

/** Ways to tell days apart, to see where a figure comes from. */
enum Grouping {

	/** By the first reason that the policy gives. */
	REASON {
		@Override
		String of(Household home, TrialDay day) {
			return day.dose().reason().isEmpty() ? "no reason given" : day.dose().reason();
		}
	},

	/** By how long the dog has been followed. */
	PHASE {
		@Override
		String of(Household home, TrialDay day) {
			return (day.day() <= 30) ? "days 1 to 30" : (day.day() <= 90) ? "days 31 to 90" : "later";
		}
	},

	OWNER {
		@Override
		String of(Household home, TrialDay day) {
			return home.owner().kind().name().toLowerCase(Locale.ROOT).replace('_', ' ');
		}
	},

	/** By how careful the clinic's plan was when the dog was taken on. */
	PLAN {
		@Override
		String of(Household home, TrialDay day) {
			double ratio = home.body().typicalMinutes() / home.plan().planMinutes();
			return (ratio < 1) ? "plan above the tolerance"
					: (ratio < 1.6) ? "tolerance 1.0 to 1.6 plans" : "tolerance over 1.6 plans";
		}
	},

	/** By number of walks suggested. */
	WALKS {
		@Override
		String of(Household home, TrialDay day) {
			return day.dose().walks() + " walks a day";
		}
	};

	abstract String of(Household home, TrialDay day);

}
