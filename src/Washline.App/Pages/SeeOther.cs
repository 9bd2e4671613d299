namespace Washline.App.Pages;

/// <summary>Sends the browser to another page after something was posted, so that loading that page again posts nothing.</summary>
/// <param name="address">A path on this site.</param>
internal sealed class SeeOther(string address) : IResult
{
    public Task ExecuteAsync(HttpContext httpContext)
    {
        httpContext.Response.StatusCode = StatusCodes.Status303SeeOther;
        httpContext.Response.Headers.Location = address;
        return Task.CompletedTask;
    }
}
