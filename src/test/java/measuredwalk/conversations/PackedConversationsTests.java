package measuredwalk.conversations;

import java.util.Arrays;
import java.util.Map;

import measuredwalk.signs.SignKind;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.springframework.core.io.DefaultResourceLoader;

import static org.assertj.core.api.Assertions.assertThat;

class PackedConversationsTests {

	private final ConversationFiles files = new ConversationFiles(new DefaultResourceLoader(), "");

	private final Replies replies = Replies.read(this.files);

	@Test
	void theConversationsThatArePackedInTheJarAreRight() {
		Scripts scripts = Scripts.read(this.files);
		assertThat(scripts.get(CheckIns.AFTER_WALK).steps()).isNotEmpty();
		assertThat(scripts.get(CheckIns.NEXT_MORNING).steps()).hasSizeLessThanOrEqualTo(Script.MOST_QUESTIONS);
	}

	@ParameterizedTest
	@EnumSource(SignKind.class)
	void everySignHasAnEverydayWordSeenAndDenied(SignKind kind) {
		assertThat(this.replies.word("seen", kind)).isNotBlank();
		assertThat(this.replies.word("denied", kind)).isNotBlank();
	}

	@Test
	void noReplyNamesADoseOrPromisesThatNothingIsWrong() {
		String all = String.join("\n", Arrays.stream(Phrase.values()).map(this.replies::say).toList());
		assertThat(all).doesNotContainPattern("(?i)\\d ?mg|not an emergency|nothing to worry");
	}

	@Test
	void placesAreFilledAndAnsweredAsTextNeverAsPattern() {
		assertThat(this.replies.say(Phrase.JOINED, Map.of("dog", "$1 \\ {walks}"))).contains("$1 \\ {walks}");
	}

}
