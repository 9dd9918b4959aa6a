package measuredwalk.tolerance.simulation;

import java.util.List;

/**
 * What dogs and owners are drawn from.
 *
 * @param name its name in the table
 * @param body ranges of bodies
 * @param owners kinds of owner, dealt out in turn
 * @param answers how check-ins fare
 * @param befallsAll what befalls every dog of this world, besides what its kind brings
 */
record World(String name, BodyLaws body, List<OwnerKind> owners, AnswerLaws answers, List<Event> befallsAll) {

	World {
		owners = List.copyOf(owners);
		befallsAll = List.copyOf(befallsAll);
	}

	World named(String other) {
		return new World(other, this.body, this.owners, this.answers, this.befallsAll);
	}

	World withBody(BodyLaws other) {
		return new World(this.name, other, this.owners, this.answers, this.befallsAll);
	}

	World withOwners(OwnerKind... others) {
		return new World(this.name, this.body, List.of(others), this.answers, this.befallsAll);
	}

	World withAnswers(AnswerLaws other) {
		return new World(this.name, this.body, this.owners, other, this.befallsAll);
	}

	World befalling(Event event) {
		return new World(this.name, this.body, this.owners, this.answers, List.of(event));
	}

}
