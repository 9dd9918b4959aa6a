package measuredwalk.care;

import java.util.List;

import org.springframework.stereotype.Component;

/** Answers to the questions about coming and going: keep, leave, erase. */
@Component
class Farewells {

	private final Erasing erasing;

	private final Leaving leaving;

	private final EarlierDogs earlierDogs;

	Farewells(Erasing erasing, Leaving leaving, EarlierDogs earlierDogs) {
		this.erasing = erasing;
		this.leaving = leaving;
		this.earlierDogs = earlierDogs;
	}

	boolean answered(List<Turn> dogs, Reply reply) {
		return dogs.stream()
			.anyMatch((turn) -> this.erasing.answered(turn, reply) || this.leaving.answered(turn, reply))
				|| this.earlierDogs.answered(dogs, reply);
	}

}
