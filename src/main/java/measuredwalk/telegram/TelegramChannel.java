package measuredwalk.telegram;

import java.io.ByteArrayInputStream;
import java.util.function.Supplier;

import measuredwalk.messaging.Channel;
import measuredwalk.messaging.Chats;
import measuredwalk.messaging.Delivery;
import measuredwalk.messaging.Document;
import measuredwalk.messaging.Pace;
import measuredwalk.messaging.Parcel;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.stereotype.Component;
import org.telegram.telegrambots.meta.api.methods.send.SendDocument;
import org.telegram.telegrambots.meta.api.methods.send.SendMessage;
import org.telegram.telegrambots.meta.api.methods.send.SendPhoto;
import org.telegram.telegrambots.meta.api.objects.InputFile;
import org.telegram.telegrambots.meta.api.objects.message.Message;

/** Sends messages by the Bot API. */
@Component
@WithToken
class TelegramChannel implements Channel {

	static final String NAME = "telegram";

	/** From the Bot API's documentation of sendMessage. */
	private static final int LONGEST_TEXT = 4096;

	/** From the Bot API's documentation of sendPhoto. */
	private static final int LONGEST_CAPTION = 1024;

	private static final String FILE_NAME = "picture.png";

	private static final Logger log = LoggerFactory.getLogger(TelegramChannel.class);

	private final BotApi api;

	private final TelegramPace pace;

	private final SendingGate gate;

	private final Chats chats;

	TelegramChannel(BotApi api, TelegramSettings settings, Chats chats) {
		this.chats = chats;
		this.api = api;
		this.pace = new TelegramPace(settings, System::nanoTime);
		this.gate = new SendingGate(settings.messagesPerSecond());
	}

	@Override
	public String name() {
		return NAME;
	}

	@Override
	public int longestText() {
		return LONGEST_TEXT;
	}

	@Override
	public int longestCaption() {
		return LONGEST_CAPTION;
	}

	@Override
	public Pace pace() {
		return this.pace;
	}

	@Override
	public Delivery deliver(Parcel parcel) {
		try {
			return deliver(parcel, parcel.address());
		}
		catch (BotApiProblem ex) {
			String movedTo = ex.movedTo();
			if (movedTo == null) {
				return delivery(ex);
			}
			this.chats.moved(NAME, parcel.address(), movedTo);
			return deliverAgain(parcel, movedTo);
		}
	}

	/** A group that has become a supergroup takes it at its new address. */
	private Delivery deliverAgain(Parcel parcel, String address) {
		try {
			return deliver(parcel, address);
		}
		catch (BotApiProblem ex) {
			return delivery(ex);
		}
	}

	private Delivery deliver(Parcel parcel, String address) {
		byte[] png = parcel.png();
		Document file = parcel.file();
		Message taken;
		this.gate.pass();
		if (png != null) {
			taken = orAlone(parcel, address, () -> this.api.call(photo(parcel, address, png)));
		}
		else if (file != null) {
			taken = orAlone(parcel, address, () -> this.api.call(document(parcel, address, file)));
		}
		else {
			taken = this.api.call(text(parcel, address, parcel.text()));
		}
		return Delivery.taken(String.valueOf(taken.getMessageId()));
	}

	/** A group may forbid pictures and files: then words go alone. */
	private Message orAlone(Parcel parcel, String address, Supplier<Message> sending) {
		try {
			return sending.get();
		}
		catch (BotApiProblem ex) {
			if (ex.kind() != BotApiProblem.Kind.REFUSED || ex.movedTo() != null) {
				throw ex;
			}
			log.warn("What goes with message {} was refused, so its words go alone: {}", parcel.outboxId(),
					ex.getMessage());
			this.gate.pass();
			return this.api.call(text(parcel, address, parcel.alone()));
		}
	}

	private static SendPhoto photo(Parcel parcel, String address, byte[] png) {
		return SendPhoto.builder()
			.chatId(address)
			.photo(new InputFile(new ByteArrayInputStream(png), FILE_NAME))
			.caption(parcel.text())
			.replyMarkup(Buttons.of(parcel))
			.build();
	}

	private static SendDocument document(Parcel parcel, String address, Document file) {
		return SendDocument.builder()
			.chatId(address)
			.document(new InputFile(new ByteArrayInputStream(file.content()), file.fileName()))
			.caption(parcel.text())
			.replyMarkup(Buttons.of(parcel))
			.build();
	}

	private static SendMessage text(Parcel parcel, String address, String text) {
		return SendMessage.builder().chatId(address).text(text).replyMarkup(Buttons.of(parcel)).build();
	}

	private static Delivery delivery(BotApiProblem problem) {
		String why = String.valueOf(problem.getMessage());
		return switch (problem.kind()) {
			case TOO_MUCH -> Delivery.slowDown(problem.retryAfter(), why);
			case CHAT_GONE -> Delivery.chatGone(why);
			case REFUSED -> Delivery.refused(why);
			case WRONG_TOKEN, CONFLICT, OUT_OF_ORDER -> Delivery.tryLater(why);
		};
	}

}
