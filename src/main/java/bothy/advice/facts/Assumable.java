package bothy.advice.facts;

/** A fact that may rest on something taken for granted. */
public interface Assumable {

    /** Whether it rests on what the grower told (false: something was assumed). */
    boolean told();
}
