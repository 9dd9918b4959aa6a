package measuredwalk.browser;

import java.time.Duration;

import measuredwalk.messaging.Chats;
import measuredwalk.messaging.Gallery;
import measuredwalk.messaging.Outbox;
import org.springframework.boot.autoconfigure.condition.ConditionalOnBooleanProperty;
import org.springframework.http.CacheControl;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;

/** The pictures in a person's chat, for that chat alone. */
@Controller
@ConditionalOnBooleanProperty("measuredwalk.rehearsal")
class ChatPictures {

	/** The page is drawn anew with each message; its pictures need not be. */
	private static final CacheControl KEPT = CacheControl.maxAge(Duration.ofMinutes(5)).cachePrivate();

	private final Chats chats;

	private final Outbox outbox;

	private final Gallery gallery;

	ChatPictures(Chats chats, Outbox outbox, Gallery gallery) {
		this.chats = chats;
		this.outbox = outbox;
		this.gallery = gallery;
	}

	@GetMapping("/chat/picture/{id}")
	ResponseEntity<byte[]> picture(@PathVariable long id, @RequestParam String as) {
		return this.chats.known(BrowserChannel.NAME, RehearsalPerson.at(as).address())
			.flatMap((chat) -> this.outbox.picture(chat.id(), id))
			.flatMap(this.gallery::png)
			.map((png) -> ResponseEntity.ok().contentType(MediaType.IMAGE_PNG).cacheControl(KEPT).body(png))
			.orElseGet(() -> ResponseEntity.notFound().build());
	}

}
