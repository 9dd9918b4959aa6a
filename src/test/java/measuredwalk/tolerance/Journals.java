package measuredwalk.tolerance;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;

import measuredwalk.signs.Moment;
import measuredwalk.signs.Overall;
import measuredwalk.signs.Severity;
import measuredwalk.signs.Sign;
import measuredwalk.signs.SignKind;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;

/** Random journals of one dog for property tests. */
final class Journals {

	static final LocalDate FIRST = LocalDate.of(2026, 1, 5);

	private static final List<SignKind> KINDS = List.of(SignKind.SLOWING, SignKind.STIFFNESS, SignKind.LAMENESS,
			SignKind.SITTING_OR_LYING_DOWN);

	private Journals() {
	}

	static Arbitrary<WalkPlan> plans() {
		return Combinators.combine(Arbitraries.integers().between(5, 60), Arbitraries.integers().between(1, 3))
			.as((minutes, walks) -> new WalkPlan(minutes, walks, Math.floor(0.3 * minutes), 2.0 * minutes));
	}

	/** Up to 25 days, the last of which has a morning and no walk yet. */
	static Arbitrary<List<ToleranceEvent>> journals() {
		return Combinators.combine(plans(), days().list().ofMinSize(2).ofMaxSize(25)).as(Journals::journal);
	}

	private record Day(boolean morningTold, Sign morning, Overall overall, List<Told> walks) {
	}

	record Told(double share, Sign sign, boolean signSeen, boolean late) {
	}

	private static List<ToleranceEvent> journal(WalkPlan plan, List<Day> days) {
		List<ToleranceEvent> journal = new ArrayList<>();
		journal.add(new ToleranceEvent.DogEnrolled(FIRST, plan, null, null, true, null));
		for (int i = 0; i < days.size(); i++) {
			LocalDate date = FIRST.plusDays(i + 1);
			Day day = days.get(i);
			if (day.morningTold()) {
				boolean worse = day.overall() == Overall.WORSE;
				journal.add(new ToleranceEvent.MorningSeen(date, worse ? List.of(day.morning()) : List.of(), null,
						day.overall(), false));
			}
			if (i + 1 < days.size()) {
				addWalks(journal, date, plan, day.walks());
			}
		}
		return journal;
	}

	private static void addWalks(List<ToleranceEvent> journal, LocalDate date, WalkPlan plan, List<Told> walks) {
		for (int walk = 0; walk < walks.size(); walk++) {
			Told told = walks.get(walk);
			double minutes = Math.max(1, Math.rint(plan.planMinutes() * told.share()));
			journal.add(new ToleranceEvent.WalkTaken(date, LocalTime.of(8 + 5 * walk, 0), minutes, minutes, minutes,
					null, told.signSeen() ? List.of(told.sign()) : List.of(), told.late()));
		}
	}

	private static Arbitrary<Day> days() {
		return Combinators
			.combine(chance(0.85), signs(), Arbitraries.of(Overall.USUAL, Overall.USUAL, Overall.USUAL, Overall.WORSE),
					walks().list().ofMaxSize(3))
			.as(Day::new);
	}

	private static Arbitrary<Told> walks() {
		return Combinators.combine(Arbitraries.doubles().between(0.4, 2.2), signs(), chance(0.2), chance(0.05))
			.as(Told::new);
	}

	static Arbitrary<Sign> signs() {
		return Combinators
			.combine(Arbitraries.of(KINDS), Arbitraries.of(Severity.class).injectNull(0.3),
					Arbitraries.of(Moment.START, Moment.MIDDLE, Moment.END).injectNull(0.5),
					Arbitraries.integers().between(2, 30).injectNull(0.6))
			.as((kind, severity, when, minute) -> new Sign(kind, true, severity, null, null, when,
					(minute != null) ? Double.valueOf(minute) : null));
	}

	private static Arbitrary<Boolean> chance(double share) {
		return Arbitraries.doubles().between(0, 1).map((draw) -> draw < share);
	}

}
