package measuredwalk.records;

import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.LocalDate;
import java.util.Locale;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Function;

import measuredwalk.files.PaperSize;
import measuredwalk.household.Dog;
import measuredwalk.household.Households;
import measuredwalk.messaging.Document;
import measuredwalk.messaging.DocumentSource;
import measuredwalk.speech.Speaking;
import org.springframework.stereotype.Service;

/** A dog's record as files, from what the journal says when they are made. */
@Service
public class Records implements DocumentSource {

	private static final String KIND = "record";

	/** By this some spreadsheets know that letters are in UTF-8. */
	private static final String BYTE_ORDER_MARK = "\ufeff";

	private static final String NOT_IN_A_NAME = "[^a-z0-9]+";

	private final Households households;

	private final RecordTable table;

	private final RecordPages pages;

	private final Clock clock;

	Records(Households households, RecordTable table, RecordPages pages, Clock clock) {
		this.households = households;
		this.table = table;
		this.pages = pages;
		this.clock = clock;
	}

	/** What form a record has. */
	public enum Form {

		/** A table for a spreadsheet. */
		CSV,
		/** Pages to read and to print. */
		PDF

	}

	/**
	 * The name by which a message asks for a record.
	 * @param dog the dog
	 * @param form its form
	 * @return the name
	 */
	public static String name(Dog dog, Form form) {
		return KIND + "/" + dog.id() + "/" + form;
	}

	@Override
	public String kind() {
		return KIND;
	}

	@Override
	public Optional<Document> document(String name) {
		String[] parts = name.split("/", 2);
		Form form = Form.valueOf(parts[1]);
		return this.households.dog(UUID.fromString(parts[0])).map((Function<Dog, Document>) (dog) -> of(dog, form));
	}

	/**
	 * Makes a record, in the words of the dog's household.
	 * @param dog the dog
	 * @param form its form
	 * @return the file
	 */
	public Document of(Dog dog, Form form) {
		return Speaking.as(dog.household().speech(), () -> made(dog, form));
	}

	private Document made(Dog dog, Form form) {
		LocalDate today = this.clock.instant().atZone(dog.household().timeZone()).toLocalDate();
		String name = dog.name().toLowerCase(Locale.ROOT).replaceAll(NOT_IN_A_NAME, "-") + "-" + RecordTexts.of("file")
				+ "-" + today;
		return switch (form) {
			case CSV -> new Document(name + ".csv", "text/csv;charset=UTF-8",
					(BYTE_ORDER_MARK + this.table.csv(dog, today)).getBytes(StandardCharsets.UTF_8));
			case PDF -> new Document(name + ".pdf", "application/pdf", this.pages.pdf(dog, today, PaperSize.A4));
		};
	}

}
