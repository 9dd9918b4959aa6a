package measuredwalk.browser;

import java.time.Duration;
import java.util.Optional;

import measuredwalk.files.Download;
import measuredwalk.messaging.Chats;
import measuredwalk.messaging.Document;
import measuredwalk.messaging.Enclosures;
import measuredwalk.messaging.Outbox;
import measuredwalk.messaging.OutgoingMessage;
import org.springframework.boot.autoconfigure.condition.ConditionalOnBooleanProperty;
import org.springframework.http.CacheControl;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;

/** The pictures and files in a person's chat, for that chat alone. */
@Controller
@ConditionalOnBooleanProperty("measuredwalk.rehearsal")
class ChatEnclosures {

	/** The page is drawn anew with each message; its pictures need not be. */
	private static final CacheControl KEPT = CacheControl.maxAge(Duration.ofMinutes(5)).cachePrivate();

	private final Chats chats;

	private final Outbox outbox;

	private final Enclosures enclosures;

	ChatEnclosures(Chats chats, Outbox outbox, Enclosures enclosures) {
		this.chats = chats;
		this.outbox = outbox;
		this.enclosures = enclosures;
	}

	@GetMapping("/chat/picture/{id}")
	ResponseEntity<byte[]> picture(@PathVariable long id, @RequestParam String as) {
		return message(id, as).map(OutgoingMessage::picture)
			.flatMap(this.enclosures::png)
			.map((png) -> ResponseEntity.ok().contentType(MediaType.IMAGE_PNG).cacheControl(KEPT).body(png))
			.orElseGet(() -> ResponseEntity.notFound().build());
	}

	@GetMapping("/chat/file/{id}")
	ResponseEntity<byte[]> file(@PathVariable long id, @RequestParam String as) {
		return message(id, as).map(OutgoingMessage::document)
			.flatMap(this.enclosures::file)
			.map(ChatEnclosures::download)
			.orElseGet(() -> ResponseEntity.notFound().build());
	}

	private static ResponseEntity<byte[]> download(Document file) {
		return Download.of(file.fileName(), file.mediaType(), file.content());
	}

	private Optional<OutgoingMessage> message(long id, String as) {
		return this.chats.known(BrowserChannel.NAME, RehearsalPerson.at(as).address())
			.flatMap((chat) -> this.outbox.message(chat.id(), id));
	}

}
