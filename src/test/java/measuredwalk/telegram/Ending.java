package measuredwalk.telegram;

/** How a life of the application ends. */
enum Ending {

	/** By {@code kill -9}: what is on its way may lose its answer, and is sent again. */
	KILLED(137, 24) {

		@Override
		void bring(RunningApplication application) {
			application.kill();
		}

	},

	/** By SIGTERM, as systemd, containers and Ctrl-C end it: nothing is sent again. */
	STOPPED(143, 0) {

		@Override
		void bring(RunningApplication application) {
			application.askToStop();
		}

	};

	private final int exitStatus;

	private final int mostRepeats;

	Ending(int exitStatus, int mostRepeats) {
		this.exitStatus = exitStatus;
		this.mostRepeats = mostRepeats;
	}

	abstract void bring(RunningApplication application);

	/** The exit status of the process: 128 and the number of the signal. */
	int exitStatus() {
		return this.exitStatus;
	}

	/** The most messages that may come a second time: those on their way at once. */
	int mostRepeats() {
		return this.mostRepeats;
	}

}
