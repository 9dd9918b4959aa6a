package measuredwalk.reading.observation;

import java.util.ArrayList;
import java.util.List;

import measuredwalk.reading.context.Annotation;
import measuredwalk.reading.lexicon.Mention;

/** Gives each sign what qualifies it: every qualifying phrase looks for its sign. */
final class Slots {

	private final Annotation annotation;

	private final Grades grades;

	private final Places places;

	private final Moments moments;

	Slots(Annotation annotation) {
		Nearness nearness = new Nearness(annotation);
		this.annotation = annotation;
		this.grades = new Grades(annotation, nearness);
		this.places = new Places(annotation, nearness);
		this.moments = new Moments(annotation, nearness);
	}

	List<Observation> filled(List<Observation> observations) {
		List<Observation> filled = new ArrayList<>(observations);
		if (filled.isEmpty()) {
			return filled;
		}
		for (Mention mention : this.annotation.mentions()) {
			switch (mention.category()) {
				case SEVERITY -> this.grades.give(filled, mention);
				case SIDE, LIMB -> this.places.give(filled, mention);
				case MOMENT -> this.moments.give(filled, mention);
				default -> {
				}
			}
		}
		this.places.carry(filled);
		this.moments.spread(filled);
		return filled;
	}

}
