package measuredwalk.telegram;

import java.util.ArrayList;
import java.util.List;

import measuredwalk.messaging.Channel;
import measuredwalk.messaging.Chats;
import measuredwalk.messaging.Delivery;
import measuredwalk.messaging.Pace;
import measuredwalk.messaging.Parcel;
import org.springframework.stereotype.Component;
import org.telegram.telegrambots.meta.api.methods.send.SendMessage;
import org.telegram.telegrambots.meta.api.objects.replykeyboard.InlineKeyboardMarkup;
import org.telegram.telegrambots.meta.api.objects.replykeyboard.buttons.InlineKeyboardButton;
import org.telegram.telegrambots.meta.api.objects.replykeyboard.buttons.InlineKeyboardRow;

/** Sends messages by the Bot API. */
@Component
@WithToken
class TelegramChannel implements Channel {

	static final String NAME = "telegram";

	/** From the Bot API's documentation of sendMessage. */
	private static final int LONGEST_TEXT = 4096;

	/** More letters than this beside each other are cut short on a small telephone. */
	private static final int WIDEST_ROW = 26;

	private static final int MOST_IN_ROW = 3;

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
		SendMessage message = SendMessage.builder().chatId(address).text(parcel.text()).build();
		if (!parcel.choices().isEmpty()) {
			message.setReplyMarkup(buttons(parcel));
		}
		this.gate.pass();
		return Delivery.taken(String.valueOf(this.api.call(message).getMessageId()));
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

	private static InlineKeyboardMarkup buttons(Parcel parcel) {
		List<InlineKeyboardRow> rows = new ArrayList<>();
		InlineKeyboardRow row = new InlineKeyboardRow();
		int width = 0;
		for (int index = 0; index < parcel.choices().size(); index++) {
			String choice = parcel.choices().get(index);
			if (!row.isEmpty() && (row.size() == MOST_IN_ROW || width + choice.length() > WIDEST_ROW)) {
				rows.add(row);
				row = new InlineKeyboardRow();
				width = 0;
			}
			row.add(InlineKeyboardButton.builder()
				.text(choice)
				.callbackData(new ButtonData(parcel.outboxId(), index).text())
				.build());
			width += choice.length();
		}
		rows.add(row);
		return InlineKeyboardMarkup.builder().keyboard(rows).build();
	}

}
