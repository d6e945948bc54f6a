package starchfilm.web.http;

/**
 * What a server serves.
 *
 * @param routes its pages
 * @param errors what stands in for a page that cannot be shown
 */
public record Site(Routes routes, ErrorPages errors) {}
