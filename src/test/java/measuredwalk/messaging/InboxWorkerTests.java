package measuredwalk.messaging;

import java.time.Instant;
import java.util.Optional;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.mockito.Mockito;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.transaction.PlatformTransactionManager;
import org.springframework.transaction.support.TransactionTemplate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.mockito.ArgumentMatchers.any;
import static org.mockito.ArgumentMatchers.anyLong;
import static org.mockito.ArgumentMatchers.anyString;
import static org.mockito.BDDMockito.given;
import static org.mockito.BDDMockito.willThrow;

class InboxWorkerTests {

	private static final IncomingMessage MESSAGE = new IncomingMessage(3, 7, "Wren", "20 minutes",
			Instant.parse("2026-03-14T18:30:00Z"), null);

	private final InboxQueue queue = Mockito.mock(InboxQueue.class);

	private final IncomingHandler handler = Mockito.mock(IncomingHandler.class);

	@SuppressWarnings("unchecked")
	private final ObjectProvider<IncomingHandler> handlers = Mockito.mock(ObjectProvider.class);

	private final InboxWorker worker = new InboxWorker(this.queue,
			new TransactionTemplate(Mockito.mock(PlatformTransactionManager.class)), this.handlers);

	@BeforeEach
	void aMessageThatCannotBeHandled() {
		given(this.handlers.getObject()).willReturn(this.handler);
		given(this.queue.lock(7)).willReturn(true);
		given(this.queue.oldestWaiting(7)).willReturn(Optional.of(MESSAGE));
		willThrow(new IllegalStateException("broken")).given(this.handler).handle(any());
	}

	@Test
	void itIsTriedAgainBeforeItIsGivenUp() {
		given(this.queue.countFailure(anyLong(), anyString())).willReturn(1);
		assertThat(this.worker.handleOldest(7)).isEqualTo(InboxWorker.Turn.HANDLED);
		Mockito.verify(this.queue, Mockito.never()).markFailed(anyLong());
	}

	@Test
	void itIsGivenUpForGoodEvenWhenNoApologyCanBeWritten() {
		given(this.queue.countFailure(anyLong(), anyString())).willReturn(1000);
		willThrow(new IllegalStateException("the outbox is broken too")).given(this.handler).apologise(any());
		assertThat(this.worker.handleOldest(7)).isEqualTo(InboxWorker.Turn.HANDLED);
		Mockito.verify(this.queue).markFailed(MESSAGE.id());
		Mockito.verify(this.handler).apologise(MESSAGE);
	}

}
