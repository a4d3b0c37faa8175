package staunch.kernel;

import java.util.Map;

/**
 * How a kernel introduces itself to a front end.
 *
 * @param banner what a console shows at its start
 * @param helpLinks from the text of a link in the help menu to its address
 */
public record KernelIdentity(String implementation, String version, String banner, Map<String, String> helpLinks) {
    public KernelIdentity {
        helpLinks = Map.copyOf(helpLinks);
    }
}
