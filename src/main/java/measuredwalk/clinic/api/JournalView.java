package measuredwalk.clinic.api;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import java.util.UUID;

import measuredwalk.household.Medication;
import measuredwalk.journal.Attached;
import measuredwalk.journal.MorningEntry;
import measuredwalk.journal.MorningFacts;
import measuredwalk.journal.Note;
import measuredwalk.journal.NoteTopic;
import measuredwalk.journal.Said;
import measuredwalk.journal.Standing;
import measuredwalk.journal.WalkEntry;
import measuredwalk.journal.WalkFacts;
import measuredwalk.signs.Limb;
import measuredwalk.signs.LoadKind;
import measuredwalk.signs.Moment;
import measuredwalk.signs.Overall;
import measuredwalk.signs.Severity;
import measuredwalk.signs.Side;
import measuredwalk.signs.Sign;
import measuredwalk.signs.SignKind;
import org.jspecify.annotations.Nullable;

/** A dog's journal as the API shows it. */
record JournalView(List<WalkView> walks, List<MorningView> mornings, List<Medication> medications, List<NoteView> notes,
		List<Attached> attachments) {

	static JournalView of(List<WalkEntry> walks, List<MorningEntry> mornings, List<Medication> medications,
			List<Note> notes, List<Attached> attachments) {
		return new JournalView(walks.stream().map((walk) -> WalkView.of(walk, of(walk.id(), attachments))).toList(),
				mornings.stream().map((morning) -> MorningView.of(morning, of(morning.id(), attachments))).toList(),
				medications, notes.stream().map(NoteView::of).toList(), attachments);
	}

	private static List<Attached> of(UUID entryId, List<Attached> attachments) {
		return attachments.stream().filter((each) -> entryId.equals(each.entryId())).toList();
	}

	/** What was told that is neither a walk nor a morning. */
	record NoteView(NoteTopic topic, LocalDate date, String said, String reportedBy, Instant reportedAt) {

		private static NoteView of(Note note) {
			return new NoteView(note.topic(), note.date(), note.said().text(), note.said().by(), note.said().at());
		}
	}

	record WalkView(UUID id, LocalDate date, @Nullable String start, @Nullable Double minutes,
			@Nullable Double minutesLow, @Nullable Double minutesHigh, @Nullable Double distanceMetres,
			boolean minutesEstimated, @Nullable Overall overall, List<SignView> signs, Set<LoadKind> loads,
			List<String> unsure, String reportedBy, Instant reportedAt, List<String> said, int version,
			Standing standing, @Nullable String endedBy, @Nullable Instant endedAt, List<Attached> attachments) {

		private static WalkView of(WalkEntry entry, List<Attached> attachments) {
			WalkFacts facts = entry.facts();
			return new WalkView(entry.id(), facts.date(), (facts.start() != null) ? facts.start().toString() : null,
					facts.minutes(), facts.minutesLow(), facts.minutesHigh(), facts.distanceMetres(),
					facts.minutesEstimated(), facts.overall(), SignView.of(facts.signs()), facts.loads(),
					facts.unsure(), entry.reportedBy().name(), entry.reportedAt(),
					entry.said().stream().map(Said::text).toList(), entry.version(), entry.standing(), entry.endedBy(),
					entry.endedAt(), attachments);
		}
	}

	record MorningView(UUID id, LocalDate date, @Nullable Double stiffMinutes, @Nullable Overall overall,
			List<SignView> signs, List<String> unsure, String reportedBy, Instant reportedAt, List<String> said,
			int version, Standing standing, @Nullable String endedBy, @Nullable Instant endedAt,
			List<Attached> attachments) {

		private static MorningView of(MorningEntry entry, List<Attached> attachments) {
			MorningFacts facts = entry.facts();
			return new MorningView(entry.id(), facts.date(), facts.stiffMinutes(), facts.overall(),
					SignView.of(facts.signs()), facts.unsure(), entry.reportedBy().name(), entry.reportedAt(),
					entry.said().stream().map(Said::text).toList(), entry.version(), entry.standing(), entry.endedBy(),
					entry.endedAt(), attachments);
		}
	}

	record SignView(SignKind sign, boolean present, @Nullable Severity severity, @Nullable Side side,
			@Nullable Limb limb, @Nullable Moment when, @Nullable Double onsetMinute) {

		private static List<SignView> of(List<Sign> signs) {
			return signs.stream().map(SignView::of).toList();
		}

		private static SignView of(Sign sign) {
			return new SignView(sign.kind(), sign.present(), sign.severity(), sign.side(), sign.limb(), sign.when(),
					sign.onsetMinute());
		}
	}

}
