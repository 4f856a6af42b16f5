package stoneprocess.rules.testkit.law;

import stoneprocess.core.survey.FloorSurvey;
import stoneprocess.core.topic.Subject;

/**
 * One place where a recommendation breaks a law.
 *
 * @param law id of the law
 * @param topic id of the topic that is at fault
 * @param subject what it was decided for
 * @param expected what the law asks for
 * @param found what was recommended
 * @param survey the survey that was answered
 */
public record Violation(String law, String topic, Subject subject, String expected, String found, FloorSurvey survey) {}
