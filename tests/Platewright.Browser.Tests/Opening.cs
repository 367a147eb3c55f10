namespace Platewright.Browser.Tests;

/// <summary>When a report could be seen and used, ms since the browser was sent there.</summary>
/// <param name="FirstPictureMs">The size line is on the screen.</param>
/// <param name="UsableMs">The whole page stands.</param>
public sealed record Opening(double FirstPictureMs, double UsableMs)
{
    /// <summary>Runs in the page before its own script and notes both times.</summary>
    public const string Watch = """
        (() => {
          const times = (window.openingTimes = {});
          const drawn = (key) => requestAnimationFrame(() => setTimeout(() => (times[key] ??= performance.now())));
          new MutationObserver((_, self) => {
            if (document.querySelector('[role=slider]')) drawn('line');
            if (!document.querySelector('main[aria-busy=false]')) return;
            drawn('whole');
            self.disconnect();
          }).observe(document, { subtree: true, childList: true, attributes: true, attributeFilter: ['aria-busy'] });
        })();
        """;
}
