package measuredwalk.tolerance.simulation;

/**
 * What moves a dog's tolerance over weeks whatever walks it takes, as a shift of its log.
 */
sealed interface Influence {

	/**
	 * The shift on a day.
	 * @param day number of the day since the dog was taken on
	 * @return shift of log tolerance
	 */
	double logShift(int day);

	/** Arthritis that gets worse a little every day. */
	record SlowDecline(double perDay) implements Influence {

		@Override
		public double logShift(int day) {
			return -this.perDay * day;
		}

	}

	/** A lasting loss overnight, such as a torn ligament or a disc. */
	record SuddenDrop(int firstDay, double depth) implements Influence {

		@Override
		public double logShift(int day) {
			return (day < this.firstDay) ? 0 : -this.depth;
		}

	}

	/** A pain drug that is begun and takes its time to full effect. */
	record DrugStarted(int firstDay, double gain, double buildUpDays) implements Influence {

		@Override
		public double logShift(int day) {
			return this.gain * Math.max(0, Math.min(1, (day - this.firstDay) / this.buildUpDays));
		}

	}

	/** Some hot days in a row. */
	record HeatWave(int firstDay, int days, double depth) implements Influence {

		@Override
		public double logShift(int day) {
			return (day >= this.firstDay && day < this.firstDay + this.days) ? -this.depth : 0;
		}

	}

	/** The slow swing of the year. */
	record Seasons(double amplitude, double phaseDays) implements Influence {

		@Override
		public double logShift(int day) {
			return this.amplitude * Math.sin(2 * Math.PI * (day + this.phaseDays) / 365);
		}

	}

}
