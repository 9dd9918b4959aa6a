package measuredwalk.tolerance.simulation;

/** How unanswered check-ins hang together. */
enum SilenceLaw {

	/** Each by itself. */
	AT_RANDOM {
		@Override
		Silence draw(double share, Luck luck) {
			return (answerLuck, day, trouble) -> answerLuck.happens(share);
		}
	},

	/** Whole days, six in a row on average: a holiday, a busy week. */
	IN_RUNS {
		@Override
		Silence draw(double share, Luck luck) {
			boolean[] silent = runs(share, luck);
			return (answerLuck, day, trouble) -> silent[day % silent.length];
		}
	},

	/**
	 * Owners of a dog in trouble are four times as silent: shame, or a night at the
	 * clinic.
	 */
	NOT_AT_RANDOM {
		@Override
		Silence draw(double share, Luck luck) {
			return (answerLuck, day, trouble) -> answerLuck.happens(trouble ? Math.min(0.8, 4 * share) : share);
		}
	};

	private static final double MEAN_RUN_DAYS = 6;

	private static final int DAYS = 800;

	abstract Silence draw(double share, Luck luck);

	private static boolean[] runs(double share, Luck luck) {
		boolean[] silent = new boolean[DAYS];
		double begins = share / (1 - share) / MEAN_RUN_DAYS;
		for (int day = 1; day < DAYS; day++) {
			silent[day] = luck.happens(silent[day - 1] ? 1 - 1 / MEAN_RUN_DAYS : begins);
		}
		return silent;
	}

}
