package measuredwalk.care;

import java.time.Duration;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Stream;

import measuredwalk.conversations.Phrase;
import measuredwalk.journal.Attached;
import measuredwalk.journal.AttachmentKind;
import measuredwalk.journal.Attachments;
import measuredwalk.journal.Journal;
import measuredwalk.journal.MorningEntry;
import measuredwalk.journal.Said;
import measuredwalk.journal.WalkEntry;
import measuredwalk.messaging.Attachment;
import measuredwalk.messaging.IncomingMessage;
import org.springframework.stereotype.Component;

/**
 * Keeps pictures and films for the clinic, with the walk or morning that their words, or
 * this carer's last words, told of. The bot cannot look at them, and says so.
 */
@Component
class Pictures {

	/**
	 * A picture without words belongs to what was told this long before: common practice,
	 * no source.
	 */
	private static final Duration SOON_AFTER = Duration.ofHours(3);

	private final Journal journal;

	private final Attachments attachments;

	Pictures(Journal journal, Attachments attachments) {
		this.journal = journal;
		this.attachments = attachments;
	}

	static boolean brings(IncomingMessage message) {
		return kind(message).isPresent();
	}

	private static Optional<AttachmentKind> kind(IncomingMessage message) {
		Attachment attachment = message.attachment();
		if (attachment == null || attachment.reference().isBlank()) {
			return Optional.empty();
		}
		return switch (attachment.kind()) {
			case PHOTO -> Optional.of(AttachmentKind.PHOTO);
			case VIDEO -> Optional.of(AttachmentKind.VIDEO);
			case DOCUMENT -> Optional.of(AttachmentKind.DOCUMENT);
			case VOICE, STICKER, OTHER -> Optional.empty();
		};
	}

	/** Keeps what came with the message, if it is of that kind. */
	void keep(Turn turn) {
		Attachment attachment = turn.message().attachment();
		if (attachment == null) {
			return;
		}
		kind(turn.message())
			.ifPresent((kind) -> this.attachments.keep(turn.dog().id(), new Attached(entryOf(turn).orElse(null), kind,
					attachment.reference(), turn.carer().name(), turn.message().receivedAt())));
	}

	/** Keeps a picture that came without words, and asks for some. */
	void keepWordless(Turn turn, Reply reply) {
		keep(turn);
		if (!turn.carer().silenced()) {
			reply.say(Phrase.PICTURE_KEPT, Map.of("dog", turn.dog().name()));
		}
	}

	/** The dog of which this carer told not long ago, if it is one. */
	Optional<Turn> lastToldOf(List<Turn> dogs) {
		List<Turn> recent = dogs.stream().filter((turn) -> entryOf(turn).isPresent()).toList();
		return (recent.size() == 1) ? Optional.of(recent.get(0)) : Optional.empty();
	}

	private Optional<UUID> entryOf(Turn turn) {
		Instant now = turn.message().receivedAt();
		return Stream
			.concat(this.journal.walks(turn.dog().id()).stream().map(Pictures::told),
					this.journal.mornings(turn.dog().id()).stream().map(Pictures::told))
			.filter((told) -> told.last().by().equals(turn.carer().name()))
			.filter((told) -> Duration.between(told.last().at(), now).compareTo(SOON_AFTER) <= 0)
			.max(Comparator.comparing((Told told) -> told.last().at()))
			.map(Told::entryId);
	}

	private static Told told(WalkEntry walk) {
		return new Told(walk.id(), walk.said().get(walk.said().size() - 1));
	}

	private static Told told(MorningEntry morning) {
		return new Told(morning.id(), morning.said().get(morning.said().size() - 1));
	}

	private record Told(UUID entryId, Said last) {
	}

}
