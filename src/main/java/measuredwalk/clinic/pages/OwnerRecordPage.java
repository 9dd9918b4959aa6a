package measuredwalk.clinic.pages;

import java.util.UUID;

import measuredwalk.clinic.access.Recorded;
import measuredwalk.files.Download;
import measuredwalk.household.Households;
import measuredwalk.messaging.Document;
import measuredwalk.records.Records;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;

/** A dog's record as its people can have it, for the clinic to hand to them. */
@Controller
class OwnerRecordPage {

	private final Households households;

	private final Records records;

	OwnerRecordPage(Households households, Records records) {
		this.households = households;
		this.records = records;
	}

	@GetMapping("/clinic/dogs/{id}/owner-record.pdf")
	@Recorded("took along a dog's record for its owner")
	ResponseEntity<byte[]> pdf(@PathVariable UUID id) {
		return download(id, Records.Form.PDF);
	}

	@GetMapping("/clinic/dogs/{id}/owner-record.csv")
	@Recorded("took along a dog's record for its owner")
	ResponseEntity<byte[]> csv(@PathVariable UUID id) {
		return download(id, Records.Form.CSV);
	}

	private ResponseEntity<byte[]> download(UUID id, Records.Form form) {
		Document file = this.records.of(this.households.dog(id).orElseThrow(() -> new NoSuchThing("dog")), form);
		return Download.of(file.fileName(), file.mediaType(), file.content());
	}

}
