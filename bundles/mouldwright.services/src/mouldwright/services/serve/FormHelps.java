package mouldwright.services.serve;

import java.util.List;
import mouldwright.language.ide.FormHelp;
import org.eclipse.lsp4j.ParameterInformation;
import org.eclipse.lsp4j.SignatureHelp;
import org.eclipse.lsp4j.SignatureInformation;
import org.eclipse.lsp4j.jsonrpc.messages.Tuple;

/** Help inside a line of several figures, as the protocol shows the parameters of a call. */
final class FormHelps {

    private FormHelps() { }

    static SignatureHelp of(FormHelp.Help help) {
        List<ParameterInformation> gaps = help.gaps().stream().map(gap -> {
            ParameterInformation information = new ParameterInformation();
            information.setLabel(Tuple.two(gap.from(), gap.to()));
            information.setDocumentation(gap.about());
            return information;
        }).toList();
        return new SignatureHelp(List.of(new SignatureInformation(help.line(), help.about(), gaps)), 0, help.active());
    }
}
