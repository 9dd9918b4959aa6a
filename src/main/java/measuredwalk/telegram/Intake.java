package measuredwalk.telegram;

import java.util.ArrayList;
import java.util.List;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import measuredwalk.messaging.Chats;
import measuredwalk.messaging.Inbox;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.dao.NonTransientDataAccessException;
import org.springframework.dao.NonTransientDataAccessResourceException;
import org.springframework.stereotype.Component;
import org.springframework.transaction.support.TransactionTemplate;

/**
 * Stores updates. When it returns, all of them are committed: as messages, or set aside
 * when they cannot be read, so that they may be confirmed.
 */
@Component
@WithToken
class Intake {

	private static final Logger log = LoggerFactory.getLogger(Intake.class);

	private final UpdateReader reader;

	private final Presses presses;

	private final Inbox inbox;

	private final Chats chats;

	private final TransactionTemplate transaction;

	Intake(UpdateReader reader, Presses presses, Inbox inbox, Chats chats, TransactionTemplate transaction) {
		this.reader = reader;
		this.presses = presses;
		this.inbox = inbox;
		this.chats = chats;
		this.transaction = transaction;
	}

	void store(Iterable<JsonNode> updates) {
		List<Incoming> read = new ArrayList<>();
		try {
			this.transaction.executeWithoutResult((status) -> updates.forEach((raw) -> read.add(store(raw))));
		}
		catch (NonTransientDataAccessResourceException ex) {
			throw ex;
		}
		catch (NonTransientDataAccessException ex) {
			log.warn("A batch of updates cannot be stored as it is; each is stored by itself.", ex);
			read.clear();
			updates.forEach((raw) -> read.add(storeAlone(raw)));
		}
		read.stream()
			.filter(Incoming.Pressed.class::isInstance)
			.map(Incoming.Pressed.class::cast)
			.forEach(this.presses::answer);
	}

	private Incoming storeAlone(JsonNode raw) {
		try {
			return this.transaction.execute((status) -> store(raw));
		}
		catch (NonTransientDataAccessResourceException ex) {
			throw ex;
		}
		catch (NonTransientDataAccessException ex) {
			setAside(raw, ex);
			return new Incoming.Nothing();
		}
	}

	private Incoming store(JsonNode raw) {
		Incoming incoming;
		try {
			incoming = this.reader.read(raw);
		}
		catch (JsonProcessingException | RuntimeException ex) {
			setAside(raw, ex);
			return new Incoming.Nothing();
		}
		put(incoming);
		return incoming;
	}

	private void put(Incoming incoming) {
		if (incoming instanceof Incoming.Told told) {
			this.inbox.receive(TelegramChannel.NAME, told.arrival());
		}
		else if (incoming instanceof Incoming.Pressed pressed) {
			this.presses.store(pressed);
		}
		else if (incoming instanceof Incoming.Membership membership) {
			move(membership);
		}
		else if (incoming instanceof Incoming.Moved moved) {
			this.chats.moved(TelegramChannel.NAME, moved.from(), moved.to());
		}
	}

	private void move(Incoming.Membership membership) {
		if (membership.gone()) {
			this.chats.gone(TelegramChannel.NAME, membership.address());
		}
		else {
			this.chats.back(TelegramChannel.NAME, membership.address());
		}
	}

	private void setAside(JsonNode raw, Exception cause) {
		String id = raw.path("update_id").asText("?");
		log.error("Update {} cannot be read and is set aside: {}.", id, cause.getClass().getSimpleName());
		this.inbox.setAside(TelegramChannel.NAME, id + "/" + Integer.toHexString(raw.hashCode()), raw.toString(),
				cause.getClass().getName());
	}

}
