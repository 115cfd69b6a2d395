package mouldwright.report;

import freemarker.log.Logger;
import freemarker.template.Configuration;
import freemarker.template.Template;
import freemarker.template.TemplateException;
import freemarker.template.TemplateExceptionHandler;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.Locale;
import java.util.Map;

/** Templates of pages. They escape every text for HTML; a slip in one of them is a fault of ours and ends the page. */
enum Page {
    /** The page of an estimate. */
    ESTIMATE("estimate.ftlh");

    private final Template template;

    Page(String file) {
        try {
            Logger.selectLoggerLibrary(Logger.LIBRARY_NONE);
            Configuration configuration = new Configuration(Configuration.VERSION_2_3_34);
            configuration.setClassForTemplateLoading(Page.class, "/templates");
            configuration.setDefaultEncoding("UTF-8");
            configuration.setLocale(Locale.ROOT);
            configuration.setTemplateExceptionHandler(TemplateExceptionHandler.RETHROW_HANDLER);
            configuration.setLogTemplateExceptions(false);
            this.template = configuration.getTemplate(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (ClassNotFoundException e) {
            throw new IllegalStateException(e);
        }
    }

    /** The page with its texts filled in.
     *  @param model maps, lists and texts under the names of the template */
    String fill(Map<String, Object> model) {
        StringWriter out = new StringWriter();
        try {
            template.process(model, out);
        } catch (TemplateException e) {
            throw new IllegalStateException(e);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return out.toString();
    }
}
