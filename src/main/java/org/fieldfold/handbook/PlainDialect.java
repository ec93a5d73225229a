package org.fieldfold.handbook;

import java.util.Set;
import org.thymeleaf.processor.IProcessor;
import org.thymeleaf.standard.StandardDialect;
import org.thymeleaf.standard.processor.StandardBlockTagProcessor;
import org.thymeleaf.standard.processor.StandardRemovableAttributeTagProcessor;
import org.thymeleaf.standard.processor.StandardTextTagProcessor;
import org.thymeleaf.standard.processor.StandardUtextTagProcessor;
import org.thymeleaf.templatemode.TemplateMode;

/**
 * The few attributes that the frame uses, and an expression that can be nothing but a variable's name: no
 * template can call anything, and no expression language has to be started for a dozen words.
 */
final class PlainDialect extends StandardDialect {
    PlainDialect() {
        setVariableExpressionEvaluator((context, expression, how) ->
                context.getVariable(expression.getExpression()));
        setJavaScriptSerializer((object, writer) -> {
            throw new IllegalStateException("no template writes script");
        });
        setCSSSerializer((object, writer) -> {
            throw new IllegalStateException("no template writes style");
        });
    }

    @Override
    public Set<IProcessor> getProcessors(String prefix) {
        return Set.of(new StandardTextTagProcessor(TemplateMode.HTML, prefix),
                new StandardUtextTagProcessor(TemplateMode.HTML, prefix),
                new StandardBlockTagProcessor(TemplateMode.HTML, prefix,
                        StandardBlockTagProcessor.ELEMENT_NAME),
                new StandardRemovableAttributeTagProcessor(prefix, "lang"),
                new StandardRemovableAttributeTagProcessor(prefix, "content"));
    }
}
