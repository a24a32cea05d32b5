/** Worksheets, exercises from a seed, and their grading. */

export type { Draw } from './chance.js';
export { type Exercise, type ExerciseTopic, exercise, exerciseTopics } from './exercise.js';
export { type Grade, gradeAnswer } from './grade.js';
export type { AnswerUnit, Draft, Mistake, MistakeTag, Topic } from './topic.js';
export {
  type LessonPages,
  type LessonPagesOptions,
  lessonPages,
  type Worksheet,
  type WorksheetOptions,
  worksheet,
} from './worksheet.js';
