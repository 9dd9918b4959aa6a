package measuredwalk.telegram;

import java.util.ArrayList;
import java.util.List;

import measuredwalk.messaging.Parcel;
import org.jspecify.annotations.Nullable;
import org.telegram.telegrambots.meta.api.objects.replykeyboard.InlineKeyboardMarkup;
import org.telegram.telegrambots.meta.api.objects.replykeyboard.buttons.InlineKeyboardButton;
import org.telegram.telegrambots.meta.api.objects.replykeyboard.buttons.InlineKeyboardRow;

/** Lays a message's answers out as buttons. */
final class Buttons {

	/** More letters than this beside each other are cut short on a small telephone. */
	private static final int WIDEST_ROW = 26;

	private static final int MOST_IN_ROW = 3;

	private Buttons() {
	}

	/**
	 * The buttons of a message.
	 * @return them, or null when it offers no answers
	 */
	static @Nullable InlineKeyboardMarkup of(Parcel parcel) {
		return parcel.choices().isEmpty() ? null : InlineKeyboardMarkup.builder().keyboard(rows(parcel)).build();
	}

	private static List<InlineKeyboardRow> rows(Parcel parcel) {
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
		return rows;
	}

}
