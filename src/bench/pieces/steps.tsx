/** What to do, one after the other. The list counts; a number that a step brings along would count twice. */
export const Steps = ({ steps }: { steps: readonly string[] }) => (
  <ol class="steps">
    {steps.map((step) => (
      <li key={step}>{step.replace(/^\d+\.\s+/, '')}</li>
    ))}
  </ol>
);
