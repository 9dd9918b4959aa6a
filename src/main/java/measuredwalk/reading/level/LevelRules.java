package measuredwalk.reading.level;

import java.util.Comparator;
import java.util.List;

import measuredwalk.reading.Level;
import measuredwalk.signs.Basis;
import measuredwalk.signs.Grade;
import measuredwalk.signs.Overall;
import measuredwalk.signs.SignKind;

/**
 * All rules for the level of a message, the most serious first. The clinic's word stands
 * above them.
 */
public final class LevelRules {

	/** Stiffness that has not eased by then is told to the clinic; expert opinion. */
	private static final double LONGEST_STIFFNESS_MINUTES = 60;

	/** Emergencies, unless another source is named. */
	private static final Basis LISTS = Basis.of(Grade.C, "emergency lists of Cornell and the AVMA, as reported");

	private static final Basis FDA_ON_ANTI_NGF = Basis.of(Grade.B, "UK VMD; FDA letter of 2024 on anti-NGF antibodies");

	private static final Basis BLOAT = Basis.of(Grade.B,
			"O'Neill 2017, JSAP: any size, 13 % of bloat cases were small breeds");

	private static final Basis HEAT = Basis.of(Grade.B, "Hall 2021, Sci Rep 11:6828: cool first, then travel");

	private static final Basis JOINT = Basis.of(Grade.B,
			"Phillips 2022, Vet Rec: joint infection hides in arthritic joints, 63 % of 103 cases");

	private static final Basis EXPERTS = Basis.of(Grade.C, "expert opinion, no source");

	private static final List<LevelRule> EMERGENCIES = List.of(
			emergency("a leg is not used", SignKind.NON_WEIGHT_BEARING),
			emergency("the dog cannot get up or walk", SignKind.RECUMBENCY),
			new LevelRule("legs gave way or do not work", Level.EMERGENCY, LISTS,
					(found) -> found.hasUrgent(SignKind.PARESIS)
							|| (found.hasWithCue(SignKind.PARESIS, "sudden") && !found.hasCue("passes"))),
			urgent("a joint suddenly hot and swollen", SignKind.SWELLING, JOINT),
			emergency("a paw is turned under", SignKind.KNUCKLING), emergency("the dog collapsed", SignKind.COLLAPSE),
			emergency("trouble breathing", SignKind.DYSPNOEA),
			emergency("white, blue or grey gums", SignKind.PALE_GUMS), emergency("a seizure", SignKind.SEIZURE),
			emergency("retching with nothing coming up", SignKind.UNPRODUCTIVE_RETCHING, BLOAT),
			emergency("a swollen belly", SignKind.ABDOMINAL_DISTENSION, BLOAT),
			emergency("overheating", SignKind.HEAT_ILLNESS, HEAT),
			emergency("cannot pass urine", SignKind.UNABLE_TO_URINATE),
			emergency("swallowed a medicine or poison", SignKind.TOXIN_INGESTION),
			new LevelRule("a wobble as if drunk", Level.EMERGENCY, LISTS,
					(found) -> found.hasUrgent(SignKind.ATAXIA) || found.hasSevere(SignKind.ATAXIA)),
			urgent("bleeding that will not stop", SignKind.BLEEDING),
			urgent("screaming or crying that does not stop", SignKind.VOCALISING),
			new LevelRule("an accident: hit by a vehicle, bitten by a snake or fallen from a height", Level.EMERGENCY,
					EXPERTS, (found) -> found.hasFlag(SignKind.PAIN, "accident")),
			urgent("a leg that suddenly drags", SignKind.HIND_LIMB_DRAGGING),
			new LevelRule("sudden dragging of a leg", Level.EMERGENCY, LISTS,
					(found) -> found.hasWithCue(SignKind.HIND_LIMB_DRAGGING, "sudden")),
			new LevelRule("a sudden wobble", Level.EMERGENCY, LISTS,
					(found) -> found.hasWithCue(SignKind.ATAXIA, "sudden") && found.isClear(SignKind.ATAXIA)),
			new LevelRule("a joint hot, swollen and very lame", Level.EMERGENCY, JOINT,
					(found) -> found.has(SignKind.SWELLING) && (found.hasSevere(SignKind.LAMENESS)
							|| (found.hasFlag(SignKind.SWELLING, "hot") && found.has(SignKind.LAMENESS)))),
			new LevelRule("overheated: panting that does not settle, with a wobble, sickness or dullness",
					Level.EMERGENCY, HEAT,
					(found) -> found.has(SignKind.PANTING) && found.hasCue("unceasing")
							&& found.has(SignKind.ATAXIA, SignKind.VOMITING, SignKind.LETHARGY)),
			new LevelRule("seizure or cannot rise after an anti-NGF injection", Level.EMERGENCY, FDA_ON_ANTI_NGF,
					(found) -> found.gets("anti-ngf") && found.has(SignKind.SEIZURE, SignKind.RECUMBENCY)));

	private static final List<LevelRule> SAME_DAY = List
		.of(new LevelRule("off colour while on an anti-inflammatory: give no more until the clinic has spoken",
				Level.SAME_DAY, Basis.of(Grade.C, "FDA advice to owners on NSAIDs, in our own words"),
				(found) -> found.gets("nsaid") && found.has(SignKind.INAPPETENCE, SignKind.VOMITING, SignKind.DIARRHOEA,
						SignKind.MELAENA, SignKind.LETHARGY, SignKind.POLYDIPSIA, SignKind.JAUNDICE)),
				new LevelRule("wobble, leaking urine, thirst or vomiting after an anti-NGF injection", Level.SAME_DAY,
						FDA_ON_ANTI_NGF,
						(found) -> found.gets("anti-ngf") && found.has(SignKind.ATAXIA, SignKind.INCONTINENCE,
								SignKind.POLYDIPSIA, SignKind.VOMITING)),
				sameDay("black stool", SignKind.MELAENA), sameDay("yellow eyes or gums", SignKind.JAUNDICE),
				new LevelRule("blood with sickness or loose stool", Level.SAME_DAY, EXPERTS,
						(found) -> found.hasFlag(SignKind.BLEEDING, "inside")
								|| (found.has(SignKind.BLEEDING) && found.has(SignKind.VOMITING, SignKind.DIARRHOEA))),
				new LevelRule("not eaten for a day", Level.SAME_DAY, EXPERTS,
						(found) -> found.hasWithCue(SignKind.INAPPETENCE, "day")
								|| found.hasFlag(SignKind.INAPPETENCE, "day")),
				new LevelRule("suddenly and clearly lame", Level.SAME_DAY, EXPERTS,
						(found) -> (found.hasWithCue(SignKind.LAMENESS, "sudden")
								|| found.hasFlag(SignKind.LAMENESS, "sudden")) && found.isClear(SignKind.LAMENESS)),
				new LevelRule("hind weakness that comes on during walks and passes", Level.SAME_DAY,
						Basis.of(Grade.B, "Goncalves 2008, JSAP 49:178: aortic clot"),
						(found) -> found.has(SignKind.PARESIS)
								|| (found.hasWithCue(SignKind.ATAXIA, "passes") && found.isClear(SignKind.ATAXIA))),
				new LevelRule("neck or back pain", Level.SAME_DAY, EXPERTS,
						(found) -> found.hasFlag(SignKind.PAIN, "spine")));

	private static final List<LevelRule> WATCH = List.of(
			new LevelRule("stiffness that does not ease within an hour", Level.WATCH, EXPERTS,
					(found) -> found.stiffMinutes() != null && found.stiffMinutes() > LONGEST_STIFFNESS_MINUTES),
			new LevelRule("worse than usual", Level.WATCH, EXPERTS, (found) -> found.overall() == Overall.WORSE),
			new LevelRule("a sign was seen", Level.WATCH, EXPERTS, Findings::hasSignBeyondEffort));

	private LevelRules() {
	}

	/**
	 * All rules, the most serious first.
	 * @return the rules
	 */
	public static List<LevelRule> all() {
		return java.util.stream.Stream.of(EMERGENCIES, SAME_DAY, WATCH).flatMap(List::stream).toList();
	}

	/**
	 * The rules that fit.
	 * @param findings what was read
	 * @return those that fit, the most serious first
	 */
	public static List<LevelRule> fitting(Findings findings) {
		return java.util.stream.Stream.of(EMERGENCIES, SAME_DAY, WATCH)
			.flatMap(List::stream)
			.filter((rule) -> rule.fits().test(findings))
			.sorted(Comparator.comparing(LevelRule::level).reversed())
			.toList();
	}

	private static LevelRule emergency(String reason, SignKind kind) {
		return emergency(reason, kind, LISTS);
	}

	private static LevelRule emergency(String reason, SignKind kind, Basis basis) {
		return new LevelRule(reason, Level.EMERGENCY, basis, (found) -> found.has(kind));
	}

	private static LevelRule urgent(String reason, SignKind kind) {
		return urgent(reason, kind, LISTS);
	}

	private static LevelRule urgent(String reason, SignKind kind, Basis basis) {
		return new LevelRule(reason, Level.EMERGENCY, basis, (found) -> found.hasUrgent(kind));
	}

	private static LevelRule sameDay(String reason, SignKind kind) {
		return new LevelRule(reason, Level.SAME_DAY, EXPERTS, (found) -> found.has(kind));
	}

}
