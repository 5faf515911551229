package lockwright.spec.form;

/** The form of one YAML file of a spec; the name is without its ending, as {@code plan}. */
public record FileForm(String name, String means, Form.Mapping mapping) {}
