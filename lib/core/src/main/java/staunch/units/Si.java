package staunch.units;

import java.lang.annotation.Documented;
import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/**
 * Declares the SI unit and the kind of a number. This one declaration drives parsing, tables, axes, JSON keys and error
 * texts; {@link Measure#of(Si)} finds the measure it stands for.
 */
@Documented
@Retention(RetentionPolicy.RUNTIME)
@Target({ElementType.RECORD_COMPONENT, ElementType.METHOD, ElementType.PARAMETER, ElementType.FIELD})
public @interface Si {
    /** SI unit as in {@link Measure#siUnit()}, "1" for a pure number. */
    String value();

    /** What the number stands for. */
    Kind kind() default Kind.PLAIN;
}
