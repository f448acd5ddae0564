import type { SpotQuestion, SpotReading } from "../service/index.js";

/** An answer that takes longer than this is not waited for when there is something else to ask. */
const PATIENCE_MS = 1000;

interface Asked<Subject> {
  readonly subject: Subject;
  readonly question: SpotQuestion;
}

/**
 * Asks what stands at a spot, one question at a time: a moving pointer asks faster than answers
 * come, and only the newest of those that wait is sent.
 */
export class SpotAsker<Subject> {
  #number = 0;
  #sent: (Asked<Subject> & { readonly id: number; readonly time: number }) | null = null;
  #waiting: Asked<Subject> | null = null;

  constructor(
    private readonly send: (id: number, question: SpotQuestion) => void,
    private readonly told: (subject: Subject, reading: SpotReading | null) => void,
    private readonly now: () => number = () => performance.now(),
  ) {}

  ask(subject: Subject, question: SpotQuestion): void {
    this.#waiting = { subject, question };
    if (!this.#sent || this.now() - this.#sent.time > PATIENCE_MS) this.#sendWaiting();
  }

  /** Nothing is asked any more. */
  forget(): void {
    this.#waiting = null;
    this.#sent = null;
  }

  answer(id: number, reading: SpotReading | null): void {
    if (this.#sent?.id !== id) return;
    const { subject } = this.#sent;
    this.#sent = null;
    if (this.#waiting) this.#sendWaiting();
    else this.told(subject, reading);
  }

  #sendWaiting(): void {
    if (!this.#waiting) return;
    this.#number += 1;
    this.#sent = { ...this.#waiting, id: this.#number, time: this.now() };
    this.#waiting = null;
    this.send(this.#sent.id, this.#sent.question);
  }
}
