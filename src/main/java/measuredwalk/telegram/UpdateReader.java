package measuredwalk.telegram;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import measuredwalk.messaging.Arrival;
import measuredwalk.messaging.Attachment;
import measuredwalk.messaging.Chats;
import measuredwalk.messaging.OpenQuestions;
import org.jspecify.annotations.Nullable;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.stereotype.Component;
import org.telegram.telegrambots.meta.api.objects.CallbackQuery;
import org.telegram.telegrambots.meta.api.objects.Update;
import org.telegram.telegrambots.meta.api.objects.User;
import org.telegram.telegrambots.meta.api.objects.chatmember.ChatMemberUpdated;
import org.telegram.telegrambots.meta.api.objects.message.Message;

/** Reads one raw update. */
@Component
@WithToken
class UpdateReader {

	/**
	 * The Bot API keeps an update for 24 hours, by its documentation: an older one tells
	 * us a wrong time.
	 */
	private static final Duration OLDEST = Duration.ofHours(25);

	private static final String START = "/start";

	private static final Set<String> PUT_OUT = Set.of("kicked", "left");

	private final ObjectMapper mapper = new ObjectMapper();

	private final Introduction introduction;

	private final Clock clock;

	/** How old an update is does not depend on a rehearsal. */
	private final Clock realClock = Clock.systemUTC();

	private final Chats chats;

	private final ObjectProvider<OpenQuestions> questions;

	UpdateReader(Introduction introduction, Clock clock, Chats chats, ObjectProvider<OpenQuestions> questions) {
		this.chats = chats;
		this.questions = questions;
		this.introduction = introduction;
		this.clock = clock;
	}

	/**
	 * Reads an update.
	 * @param raw the update
	 * @return what it means to us
	 * @throws JsonProcessingException when it does not have the form of an update
	 */
	Incoming read(JsonNode raw) throws JsonProcessingException {
		Update update = this.mapper.treeToValue(raw, Update.class);
		if (update.getMessage() != null) {
			return told("", update, update.getMessage(), update.getMessage().getDate());
		}
		if (update.getEditedMessage() != null) {
			return told("edit:", update, update.getEditedMessage(), update.getEditedMessage().getEditDate());
		}
		if (update.getCallbackQuery() != null) {
			return pressed(update.getCallbackQuery());
		}
		return (update.getMyChatMember() != null) ? membership(update.getMyChatMember()) : new Incoming.Nothing();
	}

	private Incoming told(String prefix, Update update, Message message, @Nullable Integer seconds) {
		Optional<Incoming> moved = moved(message);
		if (moved.isPresent()) {
			return moved.get();
		}
		BotIdentity us = this.introduction.identity();
		String text = Optional.ofNullable(message.getText())
			.or(() -> Optional.ofNullable(message.getCaption()))
			.orElse("");
		Attachment attachment = Attachments.of(message).orElse(null);
		boolean empty = text.isBlank() && attachment == null;
		boolean group = isGroup(message);
		if (empty || fromBot(message.getFrom())
				|| (group && !GroupTalk.toUs(message, text, us) && !answers(message, text))) {
			return new Incoming.Nothing();
		}
		return new Incoming.Told(new Arrival(String.valueOf(message.getChatId()), key(prefix, update, message),
				name(message.getFrom()), group ? GroupTalk.withoutName(text, us) : text, attachment, sentAt(seconds),
				text.startsWith(START) ? language(message.getFrom()) : null));
	}

	/** Both groups get a message that tells of it, in whatever order. */
	private static Optional<Incoming> moved(Message message) {
		String here = String.valueOf(message.getChatId());
		if (message.getMigrateToChatId() != null) {
			return Optional.of(new Incoming.Moved(here, String.valueOf(message.getMigrateToChatId())));
		}
		return Optional.ofNullable(message.getMigrateFromChatId())
			.map((from) -> new Incoming.Moved(String.valueOf(from), here));
	}

	/**
	 * While a question waits in a group, what may answer it is heard; other talk is not.
	 */
	private boolean answers(Message message, String text) {
		OpenQuestions open = this.questions.getIfAvailable();
		return open != null && !text.startsWith("/")
				&& this.chats.known(TelegramChannel.NAME, String.valueOf(message.getChatId()))
					.filter((chat) -> open.answeredBy(chat.id(), text))
					.isPresent();
	}

	/**
	 * After a quiet week update ids begin somewhere else, so that one may come a second
	 * time after years: the message's own number tells the two apart.
	 */
	private static String key(String prefix, Update update, Message message) {
		return prefix + update.getUpdateId() + "/" + message.getMessageId();
	}

	private static Incoming pressed(CallbackQuery query) {
		boolean fromOurMessage = query.getMessage() != null && query.getData() != null;
		return fromOurMessage ? new Incoming.Pressed(query.getId(), String.valueOf(query.getMessage().getChatId()),
				name(query.getFrom()), query.getData()) : new Incoming.Nothing();
	}

	private static Incoming membership(ChatMemberUpdated change) {
		String status = (change.getNewChatMember() != null) ? change.getNewChatMember().getStatus() : "";
		return new Incoming.Membership(String.valueOf(change.getChat().getId()), PUT_OUT.contains(status));
	}

	/** Groups have numbers below zero. */
	private static boolean isGroup(Message message) {
		return message.getChatId() < 0;
	}

	private static boolean fromBot(@Nullable User from) {
		return from != null && Boolean.TRUE.equals(from.getIsBot());
	}

	/** Only at the beginning, when it may be offered. */
	private static @Nullable String language(@Nullable User from) {
		return (from != null) ? from.getLanguageCode() : null;
	}

	private static String name(@Nullable User from) {
		if (from == null) {
			return "someone";
		}
		return Optional.ofNullable(from.getFirstName())
			.filter((name) -> !name.isBlank())
			.or(() -> Optional.ofNullable(from.getUserName()))
			.orElse("someone");
	}

	/**
	 * A message that waited at Telegram while we were away was said when it was sent, not
	 * now. A rehearsal's clock runs ahead of Telegram's, so only the age counts.
	 */
	private Instant sentAt(@Nullable Integer seconds) {
		Instant now = this.clock.instant();
		long sent = Objects.requireNonNullElse(seconds, 0);
		Duration age = Duration.between(Instant.ofEpochSecond(sent), this.realClock.instant());
		return (age.isNegative() || age.compareTo(OLDEST) > 0) ? now : now.minus(age);
	}

}
