package measuredwalk.tolerance;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

import measuredwalk.tolerance.filter.GridLaw;
import measuredwalk.tolerance.filter.PointMasses;
import org.hipparchus.special.Erf;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

/**
 * The belief after a random short journal against plain sums written from the equations:
 * twice as fine, all pairs of points, uncut tails, and the error function of Hipparchus.
 */
class BeliefAgainstQuadratureTests {

	private static final ToleranceSettings SETTINGS = ToleranceSettings.standard();

	private static final int REFINED = 2;

	private static final double PLAN = 20;

	private final BeliefFilter filter = new BeliefFilter(SETTINGS);

	private final double step = this.filter.axes().fresh().step() / REFINED;

	private final int points = this.filter.axes().fresh().size() * REFINED;

	/**
	 * Two fine points for each of the filter's, so that both end at the same places.
	 */
	private final double start = this.filter.axes().fresh().start() - this.step / 2;

	private record Day(List<WalkEvidence> walks, @Nullable MorningGrade nextMorning) {

		double load() {
			return this.walks.stream().mapToDouble(WalkEvidence::total).max().orElse(0);
		}

		double overload() {
			return this.walks.stream().anyMatch(WalkEvidence::hasSigns) ? load() : 0;
		}

	}

	@ParameterizedTest
	@ValueSource(longs = { 1, 2, 3, 4, 5 })
	void beliefIsThatOfPlainSums(long seed) {
		List<Day> journal = journal(new Random(seed));
		PointMasses belief = this.filter.prior(PLAN);
		double[][] plain = prior(PLAN);
		for (Day day : journal) {
			DayWalks walks = new DayWalks(day.walks(), DayWalks.Ended.NEVER, DayWalks.Ended.NEVER);
			belief = this.filter.overnight(belief, walks, likelihood(day), false);
			plain = overnight(plain, day);
		}
		GridLaw law = belief.law();
		double[] moments = moments(plain);
		assertThat(law.mean()).isCloseTo(moments[0], within(1e-6));
		assertThat(law.variance()).isCloseTo(moments[1], within(1e-6));
		for (int kind = 0; kind < plain.length; kind++) {
			double share = 0;
			for (double mass : plain[kind]) {
				share += mass;
			}
			assertThat(belief.total(kind)).isCloseTo(share, within(1e-6));
		}
	}

	private static List<Day> journal(Random random) {
		List<Day> journal = new ArrayList<>();
		for (int day = 0; day < 4; day++) {
			List<WalkEvidence> walks = new ArrayList<>();
			for (int walk = random.nextInt(3); walk > 0; walk--) {
				double total = PLAN * (0.5 + 2 * random.nextDouble());
				int grade = (random.nextDouble() < 0.4) ? 1 + random.nextInt(3) : 0;
				double after = (grade > 0 && random.nextBoolean()) ? total * random.nextDouble() * 0.7 : 0;
				double by = (after > 0) ? after + 4 : total;
				boolean late = random.nextDouble() < 0.2;
				walks.add((grade == 0) ? WalkEvidence.clean(total, late)
						: new WalkEvidence(total, grade, after, by, (after > 0) ? 4 / total : 1, late));
			}
			int seen = random.nextInt(4) - 1;
			journal.add(new Day(walks, (seen < 0) ? null : new MorningGrade(seen, seen)));
		}
		return journal;
	}

	private static @Nullable MorningLikelihood likelihood(Day day) {
		UsualMornings usual = UsualMornings.assumed(SETTINGS.mornings());
		return (day.nextMorning() != null) ? new MorningLikelihood(SETTINGS.mornings(), usual, day.nextMorning(), 1)
				: null;
	}

	private double[][] prior(double planMinutes) {
		double[][] prior = new double[2 * SETTINGS.owners().classes()][this.points];
		for (int kind = 0; kind < prior.length; kind++) {
			double weight = SETTINGS.owners().prior(kind / 2)
					* ((kind % 2 == 1) ? SETTINGS.drift().priorFlare() : 1 - SETTINGS.drift().priorFlare());
			for (int i = 0; i < this.points; i++) {
				prior[kind][i] = weight
						* density(this.start + i * this.step - Math.log(planMinutes * SETTINGS.drift().priorFactor()),
								SETTINGS.drift().priorDeviation());
			}
		}
		return normalised(prior);
	}

	private double[][] overnight(double[][] before, Day day) {
		double[][] weighed = new double[before.length][this.points];
		for (int kind = 0; kind < before.length; kind++) {
			for (int to = 0; to < 2; to++) {
				for (int i = 0; i < this.points; i++) {
					weighed[kind - kind % 2 + to][i] += before[kind][i]
							* overLuck(this.start + i * this.step, kind, to == 1, day);
				}
			}
		}
		return normalised(drifted(weighed));
	}

	private double[][] drifted(double[][] before) {
		double[] jump = new double[2 * this.points - 1];
		DriftSettings drift = SETTINGS.drift();
		for (int i = 0; i < jump.length; i++) {
			double move = (i - this.points + 1) * this.step;
			jump[i] = (1 - drift.dropChance()) * density(move, drift.dailyDeviation())
					+ drift.dropChance() * density(move - drift.dropMean(), drift.dropDeviation());
		}
		double[][] after = new double[before.length][this.points];
		for (int kind = 0; kind < before.length; kind++) {
			for (int from = 0; from < this.points; from++) {
				for (int to = 0; to < this.points; to++) {
					after[kind][to] += before[kind][from] * jump[to - from + this.points - 1];
				}
			}
		}
		return after;
	}

	private double overLuck(double fresh, int kind, boolean flareAfter, Day day) {
		double deviation = SETTINGS.walking().dayDeviation();
		double shift = (kind % 2 == 1) ? Math.log(SETTINGS.flares().factor()) : 0;
		double sum = 0;
		double weights = 0;
		for (double luck = -6 * deviation; luck <= 6 * deviation; luck += deviation / 3) {
			double weight = density(luck, deviation);
			sum += weight * chance(fresh + shift + luck, kind, flareAfter, day);
			weights += weight;
		}
		return sum / weights;
	}

	private static double chance(double today, int kind, boolean flareAfter, Day day) {
		double chance = 1;
		for (WalkEvidence walk : day.walks()) {
			double told = told(walk, today, kind / 2);
			chance *= walk.late() ? Math.sqrt(told) : told;
		}
		FlareSettings flares = SETTINGS.flares();
		double flare = (kind % 2 == 1) ? flares.stayChance() : flares.startChance() + flares.afterOverloadChance()
				* shown(day.overload() / flares.overload(), today, SETTINGS.walking().onsetDeviation());
		chance *= flareAfter ? flare : 1 - flare;
		return (day.nextMorning() != null) ? chance * morning(day, today, flareAfter) : chance;
	}

	private static double told(WalkEvidence walk, double today, int ownerClass) {
		OwnerSettings owners = SETTINGS.owners();
		double deviation = SETTINGS.walking().onsetDeviation();
		double mild = owners.mildFalseAlarm(ownerClass);
		if (walk.grade() == 0) {
			return (1 - mild) * (1 - owners.seen(ownerClass) * shown(walk.total(), today, deviation));
		}
		double falseAlarm = (walk.grade() == 1) ? mild
				: (walk.grade() == 2) ? owners.clearFalseAlarm() : owners.severeFalseAlarm();
		return owners.seen(ownerClass)
				* (shown(walk.onsetBy(), today, deviation) - shown(walk.onsetAfter(), today, deviation))
				+ falseAlarm * walk.windowShare();
	}

	private static double morning(Day day, double today, boolean flare) {
		MorningSettings mornings = SETTINGS.mornings();
		double effect = mornings.overloadEffect() * shown(day.load(), today, mornings.overloadDeviation())
				+ (flare ? mornings.flareEffect() : 0);
		double mild = 1 / (1 + (1 / mornings.usualMild() - 1) * Math.exp(-effect));
		double bad = 1 / (1 + (1 / mornings.usualBad() - 1) * Math.exp(-effect));
		double chance = switch (day.nextMorning().seen()) {
			case 0 -> 1 - mild;
			case 1 -> mild - bad;
			default -> bad;
		};
		return Math.pow(chance, mornings.power());
	}

	private static double shown(double load, double today, double deviation) {
		return (load > 0) ? 0.5 * Erf.erfc(-(Math.log(load) - today) / deviation / Math.sqrt(2)) : 0;
	}

	private static double density(double distance, double deviation) {
		return Math.exp(-distance * distance / (2 * deviation * deviation)) / deviation;
	}

	private static double[][] normalised(double[][] masses) {
		double total = 0;
		for (double[] kind : masses) {
			for (double mass : kind) {
				total += mass;
			}
		}
		for (double[] kind : masses) {
			for (int i = 0; i < kind.length; i++) {
				kind[i] /= total;
			}
		}
		return masses;
	}

	private double[] moments(double[][] masses) {
		double mean = 0;
		double square = 0;
		for (double[] kind : masses) {
			for (int i = 0; i < kind.length; i++) {
				double fresh = this.start + i * this.step;
				mean += kind[i] * fresh;
				square += kind[i] * fresh * fresh;
			}
		}
		return new double[] { mean, square - mean * mean };
	}

}
