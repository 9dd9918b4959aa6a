package measuredwalk.messaging;

import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

import measuredwalk.clock.TimedWork;
import org.springframework.core.annotation.Order;
import org.springframework.stereotype.Component;

/** Hands waiting messages to their channels, one at a time, in order for each chat. */
@Component
@Order(30)
class OutboxSender implements TimedWork {

	private final Outbox outbox;

	private final Chats chats;

	private final Clock clock;

	private final Map<String, Channel> channels;

	OutboxSender(Outbox outbox, Chats chats, Clock clock, List<Channel> channels) {
		this.outbox = outbox;
		this.chats = chats;
		this.clock = clock;
		this.channels = channels.stream().collect(Collectors.toMap(Channel::name, Function.identity()));
	}

	@Override
	public Optional<Instant> nextDue() {
		return this.outbox.nextDue();
	}

	@Override
	public synchronized void catchUp() {
		List<OutboxEntry> due = this.outbox.due();
		while (!due.isEmpty()) {
			due.forEach(this::send);
			due = this.outbox.due();
		}
	}

	private void send(OutboxEntry entry) {
		Chat chat = this.chats.find(entry.chatId()).orElseThrow();
		Channel channel = this.channels.get(chat.channel());
		Delivery delivery = (channel != null) ? channel.deliver(chat.address(), entry.message())
				: Delivery.refused("The channel '" + chat.channel() + "' is switched off.");
		note(entry, delivery);
	}

	private void note(OutboxEntry entry, Delivery delivery) {
		switch (delivery.outcome()) {
			case TAKEN -> this.outbox.markSent(entry.id(), delivery.detail());
			case TRY_LATER -> this.outbox.markForLater(entry.id(), delivery.pause(), delivery.detail());
			case REFUSED -> this.outbox.markDead(entry.id(), delivery.detail());
			case CHAT_GONE -> {
				this.outbox.markDead(entry.id(), delivery.detail());
				this.chats.markGone(entry.chatId(), this.clock.instant());
			}
		}
	}

}
