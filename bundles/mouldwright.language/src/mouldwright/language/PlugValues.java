package mouldwright.language;

import com.google.inject.Singleton;
import mouldwright.model.Attitude;
import org.eclipse.xtext.common.services.DefaultTerminalConverters;
import org.eclipse.xtext.conversion.IValueConverter;
import org.eclipse.xtext.conversion.ValueConverter;
import org.eclipse.xtext.conversion.impl.AbstractNullSafeConverter;
import org.eclipse.xtext.nodemodel.INode;

/** Turns what is written into values and back. Numbers stay as written, so that nothing rewrites them. One for all texts: finding the converters takes longer than a small text. */
@Singleton
public class PlugValues extends DefaultTerminalConverters {

	/** Numbers, dates and units are kept as texts. */
	@ValueConverter(rule = "NUMBER")
	public IValueConverter<String> number() {
		return asWritten();
	}

	@ValueConverter(rule = "DATE")
	public IValueConverter<String> date() {
		return asWritten();
	}

	@ValueConverter(rule = "UNIT")
	public IValueConverter<String> unit() {
		return asWritten();
	}

	@ValueConverter(rule = "Name")
	public IValueConverter<String> name() {
		return withoutSpaces();
	}

	@ValueConverter(rule = "QualifiedName")
	public IValueConverter<String> qualifiedName() {
		return withoutSpaces();
	}

	/** Upright, upside down, on side: two words may have any space between them. */
	@ValueConverter(rule = "Attitude")
	public IValueConverter<Attitude> attitude() {
		return new AbstractNullSafeConverter<>() {
			@Override
			protected String internalToString(Attitude value) {
				return value.getLiteral();
			}

			@Override
			protected Attitude internalToValue(String text, INode node) {
				return text.startsWith("upr") ? Attitude.UPRIGHT : text.startsWith("ups") ? Attitude.UPSIDE_DOWN : Attitude.ON_SIDE;
			}
		};
	}

	private static IValueConverter<String> asWritten() {
		return new AbstractNullSafeConverter<>() {
			@Override
			protected String internalToString(String value) {
				return value;
			}

			@Override
			protected String internalToValue(String text, INode node) {
				return text;
			}
		};
	}

	private static IValueConverter<String> withoutSpaces() {
		return new AbstractNullSafeConverter<>() {
			@Override
			protected String internalToString(String value) {
				return value;
			}

			@Override
			protected String internalToValue(String text, INode node) {
				return text.replaceAll("\\s+|/\\*.*?\\*/", "");
			}
		};
	}
}
