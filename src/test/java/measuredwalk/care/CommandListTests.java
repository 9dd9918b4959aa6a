package measuredwalk.care;

import java.util.Locale;
import java.util.ResourceBundle;
import java.util.TreeSet;

import measuredwalk.conversations.CheckIns;
import measuredwalk.household.Households;
import org.junit.jupiter.api.Test;

import static org.assertj.core.api.Assertions.assertThat;
import static org.mockito.Mockito.mock;

class CommandListTests {

	private final CommandList commands = new CommandList(mock(Households.class), mock(CheckIns.class),
			mock(CheckInTalk.class), mock(TodayTalk.class), mock(LogTalk.class), mock(LookingTalk.class),
			mock(TakingBack.class), mock(HoursTalk.class), mock(SpeechTalk.class), mock(ExportTalk.class),
			mock(Erasing.class), mock(Leaving.class));

	@Test
	void everyCommandIsDescribedInSpanishToo() {
		ResourceBundle usual = ResourceBundle.getBundle("measuredwalk.telegram.commands", Locale.ROOT);
		ResourceBundle spanish = ResourceBundle.getBundle("measuredwalk.telegram.commands",
				Locale.forLanguageTag("es"));
		assertThat(usual.keySet()).allSatisfy((name) -> {
			assertThat(spanish.getString(name)).isNotEqualTo(usual.getString(name));
			assertThat(spanish.getString(name).length()).isLessThanOrEqualTo(256);
		});
	}

	@Test
	void theChatProgramIsToldOfEveryCommandThatThereIs() {
		TreeSet<String> described = new TreeSet<>();
		ResourceBundle.getBundle("measuredwalk.telegram.commands")
			.keySet()
			.forEach((name) -> described.add("/" + name));
		assertThat(described).isEqualTo(this.commands.names());
	}

}
