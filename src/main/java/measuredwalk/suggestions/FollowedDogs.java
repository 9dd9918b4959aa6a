package measuredwalk.suggestions;

import java.lang.ref.SoftReference;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;

import measuredwalk.tolerance.ToleranceCourse;
import measuredwalk.tolerance.ToleranceEvent;
import measuredwalk.tolerance.ToleranceModel;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

/**
 * Remembers how far dogs were followed, so that a long journal is not gone through for
 * every message. The journal stays the only truth: what is remembered counts only while
 * it came from the very same events by the very same rule, and goes when memory is short.
 */
@Component
class FollowedDogs {

	private static final int MOST_DOGS = 1000;

	private final Map<UUID, SoftReference<Followed>> dogs = new LinkedHashMap<>(16, 0.75f, true) {

		@Override
		protected boolean removeEldestEntry(Map.Entry<UUID, SoftReference<Followed>> eldest) {
			return size() > MOST_DOGS;
		}

	};

	/**
	 * Follows a dog up to a day.
	 * @param day the day before which all is told, and nothing of that day
	 * @param dogId the dog
	 * @param model the model
	 * @param history all that is known, in order
	 * @return a course of one's own, and what is still to be told
	 */
	Branch until(LocalDate day, UUID dogId, ToleranceModel model, List<ToleranceEvent> history) {
		int before = 1;
		while (before < history.size() && history.get(before).date().isBefore(day)) {
			before++;
		}
		List<ToleranceEvent> told = history.subList(0, before);
		LocalDate enrolled = history.get(0).date();
		ToleranceCourse course = (before == 1) ? model.follow(told) : followed(dogId, model, told).course().branch();
		return new Branch(day.isBefore(enrolled) ? enrolled : day, course, history.subList(before, history.size()));
	}

	private Followed followed(UUID dogId, ToleranceModel model, List<ToleranceEvent> told) {
		Followed known = known(dogId);
		Followed followed = (known != null) ? known.goneOn(model, told) : Followed.afresh(model, told);
		synchronized (this.dogs) {
			this.dogs.put(dogId, new SoftReference<>(followed));
		}
		return followed;
	}

	private @Nullable Followed known(UUID dogId) {
		synchronized (this.dogs) {
			SoftReference<Followed> known = this.dogs.get(dogId);
			return (known != null) ? known.get() : null;
		}
	}

	/**
	 * A course to go on with.
	 *
	 * @param first the first day of which not all is told yet
	 * @param course the course, nobody else's
	 * @param rest what it is still to be told of
	 */
	record Branch(LocalDate first, ToleranceCourse course, List<ToleranceEvent> rest) {
	}

	/**
	 * A dog as far as it was followed.
	 *
	 * @param model the model that it was followed by
	 * @param told what was told of it
	 * @param course its course, which is never told of more: branches are
	 */
	private record Followed(ToleranceModel model, List<ToleranceEvent> told, ToleranceCourse course) {

		static Followed afresh(ToleranceModel model, List<ToleranceEvent> told) {
			return new Followed(model, List.copyOf(told), model.follow(told));
		}

		/**
		 * This one when nothing has changed, and the dog followed on when more was told.
		 */
		Followed goneOn(ToleranceModel now, List<ToleranceEvent> all) {
			int known = this.told.size();
			if (this.model != now || all.size() < known || !all.subList(0, known).equals(this.told)) {
				return afresh(now, all);
			}
			if (all.size() == known) {
				return this;
			}
			ToleranceCourse further = this.course.branch();
			all.subList(known, all.size()).forEach(further::tell);
			return new Followed(now, List.copyOf(all), further);
		}

	}

}
