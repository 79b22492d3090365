namespace Gudgeon.Web.Doors;

/// <summary>What every answer tells the browser: nothing from outside, no frames, no guessing of types.</summary>
internal static class SecureHeaders
{
    /// <summary>Scripts and connections of our own only. Pictures set styles on their elements, hence unsafe-inline for styles alone.</summary>
    private const string Policy =
        "default-src 'self'; script-src 'self'; style-src 'self' 'unsafe-inline'; img-src 'self' data: blob:; font-src 'self'; connect-src 'self'; " +
        "object-src 'none'; base-uri 'self'; form-action 'self'; frame-ancestors 'none'";

    public static Task Invoke(HttpContext context, RequestDelegate next)
    {
        var headers = context.Response.Headers;
        headers.ContentSecurityPolicy = Policy;
        headers.XContentTypeOptions = "nosniff";
        // Not no-referrer: a form would then be sent with an origin of null, which the doorkeeper must refuse.
        headers["Referrer-Policy"] = "same-origin";
        headers["Permissions-Policy"] = "camera=(), microphone=(), geolocation=()";
        headers["Cross-Origin-Resource-Policy"] = "same-origin";
        return next(context);
    }
}
