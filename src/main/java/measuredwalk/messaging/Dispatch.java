package measuredwalk.messaging;

import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.stereotype.Component;

/** Hands one message to its channel and notes what became of it. */
@Component
class Dispatch {

	private static final Duration SHORTEST_PAUSE = Duration.ofMillis(500);

	private static final Duration LONGEST_PAUSE = Duration.ofSeconds(60);

	private static final int MOST_DOUBLINGS = 7;

	private static final Logger log = LoggerFactory.getLogger(Dispatch.class);

	private final OutboxQueue queue;

	private final Chats chats;

	private final SharedCommits commits;

	private final Enclosures enclosures;

	private final Map<String, Channel> channels;

	Dispatch(OutboxQueue queue, Chats chats, SharedCommits commits, Enclosures enclosures, List<Channel> channels) {
		this.commits = commits;
		this.queue = queue;
		this.chats = chats;
		this.enclosures = enclosures;
		this.channels = channels.stream().collect(Collectors.toMap(Channel::name, Function.identity()));
	}

	Pace paceOf(Chat chat) {
		Channel channel = this.channels.get(chat.channel());
		return (channel != null) ? channel.pace() : Pace.UNLIMITED;
	}

	/** Whether the message is to be sent, now that it is its turn. */
	boolean wanted(WaitingMessage message) {
		Optional<Boolean> reachable = this.queue.stillWaitingForReachable(message);
		if (reachable.isPresent() && !reachable.get()) {
			this.queue.markDead(message.id(), "This chat takes no messages.");
		}
		return reachable.orElse(false);
	}

	Delivery deliver(WaitingMessage message) {
		Chat chat = message.chat();
		Channel channel = this.channels.get(chat.channel());
		if (channel == null) {
			return Delivery.refused("The channel '" + chat.channel() + "' is switched off.");
		}
		List<Part> parts = Part.of(message.message(), channel);
		int part = Math.min(message.partsSent(), parts.size() - 1);
		List<String> choices = (part == parts.size() - 1) ? message.message().choices() : List.of();
		return channel.deliver(parcel(message, parts.get(part), choices));
	}

	private Parcel parcel(WaitingMessage message, Part part, List<String> choices) {
		MessagePicture picture = part.picture();
		MessageDocument document = part.document();
		byte[] png = (picture != null) ? this.enclosures.png(picture).orElse(null) : null;
		Document file = (document != null) ? this.enclosures.file(document).orElse(null) : null;
		String alone = (document != null) ? document.instead() : part.text();
		boolean lost = document != null && file == null;
		return new Parcel(message.id(), message.chat().address(), lost ? alone : part.text(), choices, png, file,
				alone);
	}

	/**
	 * Notes what became of a message.
	 * @return how long to leave its chat alone
	 */
	Duration note(WaitingMessage message, Delivery delivery) {
		long id = message.id();
		switch (delivery.outcome()) {
			case TAKEN -> noteTaken(message, delivery.detail());
			case TRY_LATER, SLOW_DOWN -> this.queue.markForLater(id, delivery.detail());
			case REFUSED -> {
				log.warn("Message {} can never be sent: {}", id, delivery.detail());
				this.queue.markDead(id, delivery.detail());
			}
			case CHAT_GONE -> {
				this.chats.markGone(message.chat().id());
				this.queue.markDead(id, delivery.detail());
			}
		}
		return (delivery.outcome() == Delivery.Outcome.TRY_LATER) ? growing(message.attempts()) : delivery.pause();
	}

	private void noteTaken(WaitingMessage message, String channelMessageId) {
		Channel channel = Objects.requireNonNull(this.channels.get(message.chat().channel()));
		if (message.partsSent() + 1 < Part.of(message.message(), channel).size()) {
			this.commits.run(() -> this.queue.markPartSent(message.id()));
		}
		else {
			this.commits.run(() -> this.queue.markSent(message.id(), channelMessageId));
		}
	}

	private static Duration growing(int attempts) {
		Duration pause = SHORTEST_PAUSE.multipliedBy(1L << Math.min(attempts, MOST_DOUBLINGS));
		return (pause.compareTo(LONGEST_PAUSE) < 0) ? pause : LONGEST_PAUSE;
	}

}
