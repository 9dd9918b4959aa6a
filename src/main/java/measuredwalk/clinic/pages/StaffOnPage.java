package measuredwalk.clinic.pages;

/**
 * Who looks at a page; public for the templates only.
 *
 * @param name the account
 * @param role the role in words
 * @param maySet whether settings may be changed
 * @param mayManage whether accounts may be made
 */
public record StaffOnPage(String name, String role, boolean maySet, boolean mayManage) {
}
