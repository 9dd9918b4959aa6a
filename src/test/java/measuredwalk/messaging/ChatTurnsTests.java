package measuredwalk.messaging;

import java.util.List;

import org.junit.jupiter.api.Test;

import static org.assertj.core.api.Assertions.assertThat;

class ChatTurnsTests {

	private final ChatTurns turns = new ChatTurns(() -> List.of(5L, 6L));

	@Test
	void givesEachChatOneTurnBeforeAnyHasASecond() {
		assertThat(this.turns.take()).contains(5L);
		this.turns.done(5L);
		assertThat(this.turns.take()).contains(6L);
		this.turns.done(6L);
		assertThat(this.turns.take()).contains(5L);
	}

	@Test
	void neverGivesOneChatToTwoWorkers() {
		assertThat(this.turns.take()).contains(5L);
		assertThat(this.turns.take()).contains(6L);
		assertThat(this.turns.take()).isEmpty();
		this.turns.done(6L);
		assertThat(this.turns.take()).contains(6L);
	}

}
