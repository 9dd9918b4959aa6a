package measuredwalk.reading.observation;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

import measuredwalk.reading.context.Annotation;
import measuredwalk.reading.lexicon.Category;
import measuredwalk.reading.lexicon.Mention;
import measuredwalk.reading.words.Words;
import measuredwalk.signs.Coded;
import measuredwalk.signs.Limb;
import measuredwalk.signs.Moment;
import measuredwalk.signs.Severity;
import measuredwalk.signs.Side;
import measuredwalk.signs.Sign;
import measuredwalk.signs.SignKind;

/** Gives each sign what qualifies it: every qualifying phrase looks for its sign. */
final class Slots {

	private static final Set<SignKind> PLACED = EnumSet.of(SignKind.LAMENESS, SignKind.STIFFNESS,
			SignKind.HIND_LIMB_DRAGGING, SignKind.TREMBLING, SignKind.PAIN, SignKind.JOINT_LICKING, SignKind.SWELLING,
			SignKind.ATAXIA, SignKind.BUNNY_HOPPING, SignKind.MUSCLE_WASTING, SignKind.PAW_INJURY,
			SignKind.NON_WEIGHT_BEARING, SignKind.PARESIS, SignKind.KNUCKLING, SignKind.STUMBLING, SignKind.BLEEDING,
			SignKind.VOCALISING);

	/** There or not there; how much is not told by 'a bit' or 'so'. */
	private static final Set<SignKind> UNGRADED = EnumSet.of(SignKind.COLLAPSE, SignKind.SEIZURE, SignKind.RECUMBENCY,
			SignKind.NON_WEIGHT_BEARING, SignKind.PARESIS, SignKind.TOXIN_INGESTION, SignKind.INCONTINENCE,
			SignKind.MELAENA, SignKind.UNABLE_TO_URINATE, SignKind.BUNNY_HOPPING);

	private static final Set<String> MOVING = Set.of("come", "came", "comes", "coming", "go", "went", "goes", "going",
			"walk", "walked", "walking", "head", "heading", "turn", "turned", "get", "got", "getting", "and", "way",
			"welcome", "straight", "run", "ran", "trotted", "hopped", "be", "are", "were", "am", "hurry", "bounce",
			"bounced");

	private static final Set<String> RIGHTED = Set.of("coming", "come", "came", "all", "is", "put", "be", "not");

	private static final Set<String> SIDED = Set.of("left", "right", "near", "off", "his", "her", "both", "l", "r");

	private static final Set<String> ONWARD = Set.of("to", "home", "from", "at", "up", "down", "again", "then",
			"indoors", "inside", "garden", "door", "gate", "field", "lane", "seat", "of", "by", "in", "for", "yard",
			"road", "step", "into", "over", "round", "with", "now");

	private static final Set<String> ONLY_BEFORE = Set.of("very", "quite", "really", "so", "rather", "pretty", "slight",
			"small", "little", "bad", "fair", "dead", "wee", "fairly", "noticeable", "heavy", "proper", "serious",
			"severe", "obvious", "marked", "tiny", "huge", "massive", "awfully", "properly", "ever so");

	/**
	 * What may follow a grade that comes as an afterthought: 'limping, slightly though'.
	 */
	private static final Set<String> AFTERTHOUGHT = Set.of("though", "only", "tho", "again", "today", "now");

	/** A part of the day that names a walk tells nothing of when a sign was seen. */
	private static final Set<String> NAMES_WALK = Set.of("one", "walk", "stroll", "lap", "potter", "outing");

	private static final int ACROSS_AND = 6;

	private static final Set<Moment> DAY_PARTS = EnumSet.of(Moment.MORNING, Moment.EVENING, Moment.NIGHT);

	private final Annotation annotation;

	private final Words words;

	Slots(Annotation annotation) {
		this.annotation = annotation;
		this.words = annotation.words();
	}

	List<Observation> filled(List<Observation> observations) {
		List<Observation> filled = new ArrayList<>(observations);
		if (filled.isEmpty()) {
			return filled;
		}
		for (Mention mention : this.annotation.mentions()) {
			switch (mention.category()) {
				case SEVERITY -> grade(filled, mention);
				case SIDE, LIMB -> place(filled, mention);
				case MOMENT -> time(filled, mention);
				default -> {
				}
			}
		}
		return filled;
	}

	private void grade(List<Observation> observations, Mention mention) {
		int best = -1;
		double nearest = 3.9;
		for (int index = 0; index < observations.size(); index++) {
			Observation observation = observations.get(index);
			double distance = gradeDistance(observation.mention(), mention);
			if (distance < nearest && observation.sign().present() && !UNGRADED.contains(observation.sign().kind())) {
				best = index;
				nearest = distance;
			}
		}
		if (best >= 0) {
			Sign sign = observations.get(best).sign();
			Severity told = Coded.of(Severity.class, mention.value());
			boolean doubted = sign.severity() == Severity.MILD && observations.get(best).context().uncertain();
			if (sign.severity() == null || doubted || isStronger(told, sign.severity())) {
				observations.set(best,
						observations.get(best)
							.with(new Sign(sign.kind(), true, told, sign.side(), sign.limb(), sign.when(),
									sign.onsetMinute())));
			}
		}
	}

	private static boolean isStronger(Severity told, Severity before) {
		return told == Severity.SEVERE && before == Severity.MODERATE;
	}

	private double gradeDistance(Mention sign, Mention grade) {
		if (this.annotation.clauses().of(sign.from()) != this.annotation.clauses().of(grade.from())) {
			return isTrailing(sign, grade) ? 1 + Math.min(2.5, (grade.from() - sign.to()) / 20.0) : 9;
		}
		if (grade.overlaps(sign)) {
			return 0;
		}
		if (this.words.is(grade.from(), "so") && grade.length() == 1 && sign.from() != grade.to()) {
			return 9;
		}
		if (grade.to() <= sign.from()) {
			return sign.from() - grade.to();
		}
		boolean onlyBefore = ONLY_BEFORE.contains(this.words.form(grade.from())) && grade.length() == 1;
		return onlyBefore ? 9 : grade.from() - sign.to() + 0.5;
	}

	/** 'limping today, off hind, badly': a clause that is nothing but the grade. */
	private boolean isTrailing(Mention sign, Mention grade) {
		boolean alone = this.words.isBreakBefore(grade.from()) && (this.words.isBreakBefore(grade.to())
				|| (AFTERTHOUGHT.contains(this.words.form(grade.to())) && this.words.isBreakBefore(grade.to() + 1)));
		return alone && grade.from() >= sign.to() && this.annotation.clauses()
			.sentenceOf(sign.from()) == this.annotation.clauses().sentenceOf(grade.from());
	}

	private void place(List<Observation> observations, Mention mention) {
		if (this.words.is(mention.from() - 1, "not")
				|| (this.words.is(mention.from() - 1, "the") && this.words.is(mention.from() - 2, "not"))) {
			return;
		}
		int best = isWayBack(mention) ? -1 : nearest(observations, mention, true);
		if (best >= 0) {
			Observation observation = observations.get(best);
			Sign sign = observation.sign();
			Side side = sign.side();
			Limb limb = sign.limb();
			boolean corrected = isCorrected(mention);
			if (mention.category() == Category.SIDE && (side == null || corrected) && !mention.value().equals("both")) {
				side = Coded.of(Side.class, mention.value());
			}
			if (mention.category() == Category.LIMB && (limb == null || corrected)) {
				limb = Coded.of(Limb.class, mention.value());
			}
			observations.set(best, observation
				.with(new Sign(sign.kind(), true, sign.severity(), side, limb, sign.when(), sign.onsetMinute())));
		}
	}

	/** 'the left, no, I mean right': what comes last counts. */
	private boolean isCorrected(Mention mention) {
		for (int at = mention.from() - 1; at >= Math.max(0, mention.from() - 3); at--) {
			if (Set.of("mean", "meant", "sorry", "actually", "no", "rather").contains(this.words.form(at))) {
				return true;
			}
		}
		return false;
	}

	/** 'came back', 'the back of the car', 'coming right': no leg, no side. */
	private boolean isWayBack(Mention mention) {
		if (mention.length() == 1 && this.words.is(mention.from(), "right")) {
			return mention.from() > 0 && RIGHTED.contains(this.words.form(mention.from() - 1));
		}
		if (mention.length() > 1 || !this.words.is(mention.from(), "back")) {
			return false;
		}
		boolean counted = mention.from() > 0 && this.words.isBreakBefore(mention.to())
				&& Character.isDigit(this.words.form(mention.from() - 1).charAt(0));
		if (counted) {
			return true;
		}
		boolean moving = mention.from() > 0 && MOVING.contains(this.words.form(mention.from() - 1));
		boolean onward = mention.to() < this.words.size() && ONWARD.contains(this.words.form(mention.to()))
				&& !this.words.isBreakBefore(mention.to());
		boolean sided = mention.from() > 0 && SIDED.contains(this.words.form(mention.from() - 1));
		return moving || (onward && !sided);
	}

	private void time(List<Observation> observations, Mention mention) {
		if ((mention.entry().has("weak") && !isClosing(mention)) || isSince(mention) || isFine(mention, observations)) {
			return;
		}
		int best = nearest(observations, mention, false);
		if (best >= 0 && !isOfWalk(mention, observations.get(best).mention())) {
			Observation observation = observations.get(best);
			Sign sign = observation.sign();
			if (sign.when() == null) {
				observations.set(best,
						observation.with(new Sign(sign.kind(), sign.present(), sign.severity(), sign.side(),
								sign.limb(), Coded.of(Moment.class, mention.value()),
								mention.entry().has("immediate") ? Double.valueOf(0) : sign.onsetMinute())));
			}
		}
	}

	/** '20 mins this morning, bit slow': the time of day is the walk's. */
	private boolean isOfWalk(Mention mention, Mention sign) {
		if (!DAY_PARTS.contains(Coded.of(Moment.class, mention.value()))) {
			return false;
		}
		int clause = this.annotation.clauses().of(mention.from());
		boolean numbered = false;
		for (int at = 0; at < this.words.size(); at++) {
			boolean outside = at < mention.from() || at >= mention.to();
			numbered |= outside && this.annotation.clauses().of(at) == clause
					&& (Character.isDigit(this.words.form(at).charAt(0)) || this.words.is(at, "minutes"));
		}
		boolean apart = clause != this.annotation.clauses().of(sign.from());
		return (apart && numbered)
				|| (mention.to() < this.words.size() && NAMES_WALK.contains(this.words.form(mention.to())));
	}

	/** 'fine at the start, limped later': the part of the walk without the sign. */
	private boolean isFine(Mention mention, List<Observation> observations) {
		int clause = this.annotation.clauses().of(mention.from());
		return this.annotation.mentions(Category.NUMBER_CUE)
			.stream()
			.anyMatch((cue) -> cue.value().equals("fine") && this.annotation.clauses().of(cue.from()) == clause)
				&& observations.stream()
					.noneMatch((seen) -> this.annotation.clauses().of(seen.mention().from()) == clause);
	}

	/** 'since this morning' is now. */
	private boolean isSince(Mention mention) {
		return this.words.is(mention.from() - 1, "since")
				|| (this.words.is(mention.from() - 2, "since") && this.words.is(mention.from() - 1, "yesterday"));
	}

	private boolean isClosing(Mention mention) {
		return this.words.isBreakBefore(mention.to()) || this.words.is(mention.to(), "was")
				|| this.words.is(mention.to(), "and");
	}

	private int nearest(List<Observation> observations, Mention mention, boolean place) {
		int best = -1;
		int nearest = Integer.MAX_VALUE;
		for (int index = 0; index < observations.size(); index++) {
			Sign sign = observations.get(index).sign();
			if (place ? (sign.present() && PLACED.contains(sign.kind())) : sign.present()) {
				int distance = distance(observations.get(index).mention(), mention);
				if (distance < nearest) {
					best = index;
					nearest = distance;
				}
			}
		}
		return best;
	}

	/**
	 * 'his leg quivers when he stands, back left': the place comes as an afterthought.
	 */
	private boolean isFragment(Mention mention, Mention sign) {
		int from = mention.from();
		while (!this.words.isBreakBefore(from)) {
			from--;
		}
		int to = mention.to();
		while (!this.words.isBreakBefore(to)) {
			to++;
		}
		return to - from <= 4 && sign.to() <= from
				&& this.annotation.clauses().sentenceOf(sign.from()) == this.annotation.clauses().sentenceOf(from);
	}

	/** 'lame on the near fore and stiff behind': each place is of its own half. */
	private boolean isJoinedBetween(Mention sign, Mention mention) {
		for (int at = Math.min(sign.to(), mention.to()); at < Math.max(sign.from(), mention.from()); at++) {
			if (this.words.is(at, "and") || this.words.is(at, "with") || this.words.is(at, "plus")) {
				return true;
			}
		}
		return false;
	}

	/** Words between, where a clause end counts as ten and two of them are too far. */
	private int distance(Mention sign, Mention mention) {
		if (sign.overlaps(mention)) {
			return 0;
		}
		int clauses = Math
			.abs(this.annotation.clauses().of(sign.from()) - this.annotation.clauses().of(mention.from()));
		if (clauses > 1 && !isFragment(mention, sign)) {
			return Integer.MAX_VALUE;
		}
		int between = (mention.from() >= sign.to()) ? mention.from() - sign.to() : sign.from() - mention.to();
		return between + clauses * 10 + (isJoinedBetween(sign, mention) ? ACROSS_AND : 0);
	}

}
