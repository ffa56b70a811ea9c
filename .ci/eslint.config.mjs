import { configs as lit } from 'eslint-plugin-lit';
import litA11y from 'eslint-plugin-lit-a11y';
import { configs as wc } from 'eslint-plugin-wc';
import tseslint from 'typescript-eslint';

export default tseslint.config(
  { ignores: ['dist/', 'node_modules/', 'coverage/'] },
  ...tseslint.configs.recommended,
  {
    files: ['src/**/*.ts', 'workers/**/*.ts', 'sheets/**/*.ts', 'tests/**/*.ts'],
    rules: {
      '@typescript-eslint/consistent-type-imports': 'error',
      '@typescript-eslint/no-non-null-assertion': 'off',
      '@typescript-eslint/no-unused-vars': ['error', { argsIgnorePattern: '^_' }],
      'eqeqeq': ['error', 'always', { null: 'ignore' }],
      'no-console': 'error',
    },
  },
  {
    files: ['src/**/*.ts'],
    ...lit['flat/recommended'],
  },
  {
    files: ['src/**/*.ts'],
    ...wc['flat/recommended'],
  },
  {
    files: ['src/**/*.ts'],
    plugins: { 'lit-a11y': litA11y },
    rules: {
      ...litA11y.configs.recommended.rules,
      // The strict policy blocks them.
      'lit/no-template-arrow': 'off',
      'wc/guard-super-call': 'off',
      'max-lines': ['error', { max: 340, skipBlankLines: true, skipComments: true }],
    },
  },
  {
    files: ['workers/**/*.ts'],
    rules: { 'max-lines': ['error', { max: 340, skipBlankLines: true, skipComments: true }] },
  },
  { files: ['tests/**/*.ts'], rules: { 'no-console': 'off', '@typescript-eslint/no-unused-expressions': 'off' } },
);
