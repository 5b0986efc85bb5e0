package croftboard.plan.file;

import croftboard.plan.WeekPlan;

/** Promises, share, proof and broken musts. */
final class PromiseForm {
    private PromiseForm() { }

    static Out write(WeekPlan.Promise row) {
        return new Out().text("id", row.id()).text("say", row.say()).maybe("day", row.day()).yes("kept", row.kept())
                .whole("amount", row.amount()).whole("costCents", row.cents());
    }

    static WeekPlan.Promise promise(In in) throws Unreadable {
        return new WeekPlan.Promise(in.text("id"), in.text("say"), in.maybeDate("day"), in.yes("kept"),
                in.number("amount"), in.number("costCents"));
    }

    static Out write(WeekPlan.Share share) {
        return new Out().text("definition", share.definition()).ratio("target", share.target())
                .whole("localCents", share.local()).whole("notLocalCents", share.notLocal())
                .whole("unclassifiedCents", share.unclassified());
    }

    static WeekPlan.Share share(In in) throws Unreadable {
        return new WeekPlan.Share(in.text("definition"), in.ratio("target"), in.number("localCents"),
                in.number("notLocalCents"), in.number("unclassifiedCents"));
    }

    static Out write(WeekPlan.Proof proof) {
        return new Out().maybeWhole("bestForMenuCents", proof.bestForMenu())
                .maybeWhole("bestAtAllCents", proof.bestAtAll()).text("how", proof.how());
    }

    static WeekPlan.Proof proof(In in) throws Unreadable {
        return new WeekPlan.Proof(in.maybeNumber("bestForMenuCents"), in.maybeNumber("bestAtAllCents"), in.text("how"));
    }

    static Out write(WeekPlan.Missing row) {
        return new Out().text("what", row.what()).text("mend", row.mend());
    }

    static WeekPlan.Missing missing(In in) throws Unreadable {
        return new WeekPlan.Missing(in.text("what"), in.text("mend"));
    }
}
